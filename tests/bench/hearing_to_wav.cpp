// SPDX-License-Identifier: GPL-3.0-or-later
// Sounds a recorded session into a WAV file (16 bit, stereo, 48 kHz):
//   hearing_to_wav SESSION OUT.wav [FROM_S [LENGTH_S]]
// What is heard is what the trainee heard, where the trainee was.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <exception>
#include <fstream>
#include <limits>
#include <string>
#include <variant>
#include <vector>

#include "hearing/scene.h"
#include "hearing/synth.h"
#include "session/store.h"

namespace {

using namespace cabwright;

constexpr int kRate = 48000;
constexpr std::size_t kSamplesPerTick = 2U * static_cast<std::size_t>(kRate) / 100U;

class WavFile {
 public:
  explicit WavFile(const std::string& name) : out_(name, std::ios::binary) { writeHeader(); }
  void write(const std::vector<float>& samples) {
    std::string bytes;
    bytes.reserve(samples.size() * 2);
    for (float s : samples) append(bytes, static_cast<std::uint32_t>(std::lround(s * 32767.0F)), 2);
    out_ << bytes;
    data_bytes_ += static_cast<std::uint32_t>(bytes.size());
  }
  [[nodiscard]] bool close() {
    out_.seekp(0);
    writeHeader();
    out_.close();
    return out_.good();
  }

 private:
  static void append(std::string& bytes, std::uint32_t value, int count) {
    for (int k = 0; k < count; ++k) bytes += static_cast<char>((value >> (8 * k)) & 0xFFU);
  }
  void writeHeader() {
    std::string h = "RIFF";
    append(h, 36 + data_bytes_, 4);
    h += "WAVEfmt ";
    append(h, 16, 4);
    append(h, 1, 2);
    append(h, 2, 2);
    append(h, kRate, 4);
    append(h, kRate * 4, 4);
    append(h, 4, 2);
    append(h, 16, 2);
    h += "data";
    append(h, data_bytes_, 4);
    out_ << h;
  }
  std::ofstream out_;
  std::uint32_t data_bytes_ = 0;
};

int soundSession(const std::string& session, const std::string& wav, double from_s,
                 double length_s) {
  const session::Store store{session};
  session::Store::Reader reader = store.read();
  hearing::Synth synth;
  WavFile file(wav);
  std::vector<float> samples;
  std::int64_t now = -1;
  while (const auto event = reader.next()) {
    const auto* frame = std::get_if<unit::Frame>(&*event);
    if (frame == nullptr) continue;
    const double at_s = static_cast<double>(frame->tick) / 100.0;
    if (at_s > from_s + length_s) break;
    if (now >= 0) {
      samples.resize(static_cast<std::size_t>(frame->tick - now) * kSamplesPerTick);
      synth.render(samples, kRate);
      if (at_s > from_s) file.write(samples);
    }
    now = frame->tick;
    const int place = static_cast<int>((*frame)[unit::Signal::kPlace]);
    synth.setScene(hearing::calcScene(*frame, static_cast<unit::Place>(std::max(0, place - 1))));
  }
  if (!file.close()) {
    fmt::print(stderr, "{}: cannot be written\n", wav);
    return 1;
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc < 3) {
    fmt::print(stderr, "hearing_to_wav SESSION OUT.wav [FROM_S [LENGTH_S]]\n");
    return 2;
  }
  try {
    return soundSession(argv[1], argv[2], argc > 3 ? std::atof(argv[3]) : 0.0,
                        argc > 4 ? std::atof(argv[4]) : std::numeric_limits<double>::max());
  } catch (const std::exception& e) {
    fmt::print(stderr, "{}\n", e.what());
    return 1;
  }
}
