// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/status_line.h"

#include <QStatusBar>

namespace cabwright::drawing {

void hideWhileSilent(QStatusBar* line) {
  line->setSizeGripEnabled(false);
  line->hide();
  QObject::connect(line, &QStatusBar::messageChanged, line,
                   [line](const QString& words) { line->setVisible(!words.isEmpty()); });
}

}  // namespace cabwright::drawing
