// SPDX-License-Identifier: GPL-3.0-or-later
// Marks a run or a recording of one: the same witness sees both, so the sheet is the same.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "marking/aim.h"
#include "marking/judgement.h"
#include "marking/marker.h"
#include "marking/sheet.h"
#include "session/desk_actions.h"
#include "session/record.h"
#include "unit/items.h"
#include "unit/unit_start.h"

namespace cabwright::session {

/// What a sheet needs beside the rules: all of it follows from the scenario.
struct MarkingTerms {
  std::shared_ptr<const marking::RuleSet> rules;
  marking::PassRule pass;
  std::optional<marking::Aim> aim;
  marking::JudgementPolicy judgement_policy;
  /// Conditions hidden at the start ({"end2.hoses", "hanging"}), to call them by name.
  std::vector<unit::Setting> hidden;
  /// Controls as the scenario sets its stage with them ({"cab1.handbrake", "off"}): where they
  /// stand is how the run begins, and no defect that nobody spoke of.
  std::vector<unit::Setting> staged;
};

class MarkingWitness final : public Witness {
 public:
  explicit MarkingWitness(MarkingTerms terms);

  void seeFrame(const unit::Frame& frame) override;
  void seeAction(const TimedAction& action) override;
  void seeHash(const StateHash&) override {}
  /// The run is over.
  void finish(std::int64_t tick);

  [[nodiscard]] const marking::Marker& marker() const { return marker_; }
  /// The sheet as it stands. Faults put in, what the instructor did and limits of the model come
  /// into the head. After an intervention its lines are those of the part before it.
  [[nodiscard]] marking::MarkSheet makeSheet(marking::SheetHead head) const;

 private:
  /// What is known of one item.
  struct ItemTruth {
    unit::DefectClass at_start = unit::DefectClass::kNone;
    std::optional<unit::DefectClass> at_judgement;
    bool put_in = false;  ///< by the instructor or the scenario, in the run
    bool met = false;     ///< out of order when the trainee came to its place
    std::string hidden;   ///< name of the condition put in; empty: sound or by itself
    std::string judged_condition;
  };
  [[nodiscard]] unit::DefectClass defectNow(unit::Item item) const;
  [[nodiscard]] std::string conditionNow(unit::Item item) const;
  [[nodiscard]] const unit::LiveTest* findLiveTest(unit::Item item) const;
  [[nodiscard]] bool isStaged(unit::Item item) const;
  [[nodiscard]] bool isMachineAtFault(unit::Item item) const;
  /// The trainee has come to a place in this frame.
  void comeTo(unit::Place place);
  using Items = std::array<ItemTruth, unit::kItemCount>;
  /// What was so when the instructor first stepped in.
  struct Unaided {
    marking::UnaidedPart part;
    marking::JudgementTable judgements;
  };
  [[nodiscard]] std::vector<marking::TruthRow> makeTruth() const;
  [[nodiscard]] marking::JudgementTable makeJudgements() const;
  void noteCondition(const unit::Action& action);
  bool noteDesk(const TimedAction& timed);
  void notePace(std::int64_t tick, const unit::Pace& pace);

  MarkingTerms terms_;
  marking::Marker marker_;
  marking::JudgementListener judgements_;
  marking::AimListener aim_;
  Items items_{};
  std::optional<unit::Frame> last_;
  marking::SheetHead notes_;  ///< only what happened: faults, pace, remarks ...
  unit::Pace pace_ = unit::kStandardPace;
  std::optional<Unaided> unaided_;
  bool within_model_ = true;
};

}  // namespace cabwright::session
