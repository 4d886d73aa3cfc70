// SPDX-License-Identifier: GPL-3.0-or-later
// Every page of the program's window and every panel of the sheet, one after the other, to be
// looked at by tests.
#pragma once

#include <QSize>
#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "drawing/ink.h"
#include "text_recorder.h"

namespace cabwright::tests {

using Look = std::function<void(const std::string& what, QWidget& page)>;

/// The run is short, and its sheet full of what was not done.
void lookAtAll(QSize size, const Look& look, drawing::Theme theme = drawing::Theme::kDay);

/// Every page of the instructor's desk, with faults in, and every section of writing.
void lookAtDesk(QSize size, const Look& look, drawing::Theme theme = drawing::Theme::kDay);

/// The words on a page, with those that stand still on a plate.
[[nodiscard]] std::vector<testing_ui::PaintedWords> wordsOf(
    QWidget& page, drawing::Theme theme = drawing::Theme::kDay);

}  // namespace cabwright::tests
