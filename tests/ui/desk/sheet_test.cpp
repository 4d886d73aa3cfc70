// SPDX-License-Identifier: GPL-3.0-or-later
// What the desk looks like: words that can be read, in every size and theme, and names for screen
// readers.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractSpinBox>

#include "desk/draw_unit.h"
#include "desk_rig.h"
#include "text_recorder.h"
#include "words_lint.h"

namespace cabwright::tests {
namespace {

using ::testing::IsEmpty;

void putIn(DeskRig& rig, const char* fault) { ASSERT_TRUE(rig.desk().take("arm", fault)) << fault; }

TEST(Sheet, WordsOnTheUnitCanBeRead) {
  DeskRig rig;
  for (const char* fault : {"compressor2.belt_gone", "gearbox2.band3_worn", "end1.hose_off",
                            "battery.weak", "brake_cylinder3.sticks_on", "cab1.air_stuck",
                            "engine1.fire", "final_drive1.tooth_on_tooth"})
    putIn(rig, fault);
  rig.pass(0.2);
  const desk::UnitView& unit = *rig.window().faults()->unit();
  for (const auto theme : {drawing::Theme::kDay, drawing::Theme::kNight}) {
    for (const QSizeF size : {QSizeF(1280, 720), QSizeF(1600, 1000), QSizeF(1920, 1080)}) {
      int counted = 0;
      const auto faults = testing_ui::findWordFaults(
          [&](drawing::Pen& pen, const drawing::SheetFrame&) {
            pen.push({40, 60}, 0);
            unit.paintSheet(pen);
            pen.pop();
          },
          size, theme, &counted);
      EXPECT_THAT(faults, IsEmpty());
      EXPECT_GE(counted, 12);
    }
  }
}

TEST(Sheet, NoWordsAreCutOnAnyPage) {
  for (const QSize size : {QSize(1280, 720), QSize(1600, 1000), QSize(1920, 1080)}) {
    DeskRig rig("warm-tooth", scenario::Mode::kGuided, size);
    putIn(rig, "compressor2.belt_gone");
    rig.pass(0.2);
    rig.window().faults()->unit()->button(desk::findSpot("gearbox2"))->click();
    for (int k = 0; k < rig.window().pageCount(); ++k) {
      rig.window().tabs()->setCurrentIndex(k);
      QCoreApplication::processEvents();
      ASSERT_EQ(rig.window().size(), size);
      testing_ui::TextRecorder recorder(size);
      rig.window().render(&recorder);
      EXPECT_GT(recorder.words().size(), 20U);
      EXPECT_THAT(testing_ui::findCutWords(recorder.words(), size), IsEmpty())
          << rig.window().tabs()->tabText(k).toStdString() << " at " << size.width();
    }
  }
}

TEST(Sheet, EverythingThatTakesKeysHasAName) {
  DeskRig rig;
  for (QWidget* widget : rig.window().findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || widget->focusProxy() != nullptr) continue;
    const QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
    if (face == nullptr || !widget->isEnabled()) continue;
    // Parts of a spin box or a combo speak through it.
    if (qobject_cast<QAbstractSpinBox*>(widget->parentWidget()) != nullptr) continue;
    if (qobject_cast<QComboBox*>(widget->parentWidget()) != nullptr) continue;
    if (widget->metaObject()->className() == QByteArray("QComboBoxPrivateContainer")) continue;
    if (widget->window() != &rig.window()) continue;
    EXPECT_FALSE(face->text(QAccessible::Name).isEmpty())
        << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
  }
}

}  // namespace
}  // namespace cabwright::tests
