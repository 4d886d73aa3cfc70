// SPDX-License-Identifier: GPL-3.0-or-later
// A small session that ended in assessment, and is sealed by a key every test knows.
#pragma once

#include "sample_session.h"
#include "session/seal.h"

namespace cabwright::session {

inline SigningKey sampleKey(std::uint8_t number = 1) {
  Seed seed{};
  seed.fill(number);
  return SigningKey(seed);
}

inline SessionHeader assessmentHeader() {
  SessionHeader header = sampleHeader();
  header.run_mode = scenario::Mode::kAssessment;
  header.people = {{"trainee", "P. Example"}, {"instructor", "Q. Sample"}};
  return header;
}

/// Records, ends and seals a run of so many ticks with a station key in `folder`.
inline void recordSealed(const std::filesystem::path& file, const std::filesystem::path& folder,
                         std::int64_t ticks = 1200) {
  RecorderOptions options;
  options.key_folder = folder;
  Recorder recorder(file, assessmentHeader(), options);
  std::int64_t number = 0;
  showSample(recorder, 0, ticks, number);
  recorder.close(sampleClosing(ticks));
}

}  // namespace cabwright::session
