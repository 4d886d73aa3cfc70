// SPDX-License-Identifier: GPL-3.0-or-later
// What guard, signaller, second person and others say to the trainee of their own accord.
#include <QHBoxLayout>

#include "cab/names.h"
#include "desk/desk_look.h"
#include "desk/people_page.h"
#include "unit/condition.h"

namespace cabwright::desk {
namespace {

using unit::Actor;

QString toQt(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

}  // namespace

void PeoplePage::addSpeech(QVBoxLayout* column) {
  QWidget* box = column->parentWidget();
  column->addWidget(makeHeading(tr("Somebody speaks to the trainee"), box));
  speaker_ = new ChoiceBox(box);
  speaker_->setObjectName(QStringLiteral("speaker"));
  speaker_->setAccessibleName(tr("Who speaks"));
  for (const auto& [word, who] :
       {std::pair{tr("Guard"), Actor::kGuard}, std::pair{tr("Signaller"), Actor::kSignaller},
        std::pair{tr("Second person"), Actor::kHelper},
        std::pair{tr("Shed, fitter or somebody else"), Actor::kInstructor}})
    speaker_->addItem(word, static_cast<int>(who));
  words_ = new ChoiceBox(box);
  words_->setObjectName(QStringLiteral("speech"));
  words_->setAccessibleName(tr("What is said"));
  std::vector<std::string_view> names;
  (void)unit::findSignalWord(unit::Signal::kHeardWords, {}, names);
  for (const std::string_view name : names) {
    std::vector<std::string_view> unused;
    const auto number = unit::findSignalWord(unit::Signal::kHeardWords, name, unused);
    const QString said =
        number ? toQt(unit::wordsOf(static_cast<unit::Reply>(*number))) : QString();
    if (!said.isEmpty()) words_->addItem(cab::translateSeen(said), toQt(name));
  }
  for (QComboBox* choice : {speaker_, words_}) {
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(16);
    choice->setMaxVisibleItems(24);
    column->addWidget(choice);
  }
  auto* row = new QHBoxLayout;
  auto* say = makeButton(tr("Say it"), QStringLiteral("say_it"), box);
  row->addWidget(say);
  row->addStretch(1);
  column->addLayout(row);
  connect(say, &QPushButton::clicked, this, [this] {
    desk_.take(unit::Action{static_cast<Actor>(speaker_->currentData().toInt()),
                            "say",
                            words_->currentData().toString().toStdString(),
                            {}});
  });
}

}  // namespace cabwright::desk
