// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/hints.h"

#include <QApplication>
#include <QEvent>
#include <QLineEdit>
#include <QPalette>
#include <QPlainTextEdit>

namespace cabwright::drawing {
namespace {

constexpr int kAlpha = 175;  // of 255: some 5.5 to 1 with the inks and faces of both themes

class HintKeeper final : public QObject {
 public:
  using QObject::QObject;

  bool eventFilter(QObject* watched, QEvent* event) override {
    // A style sheet sets the palette before one of these, or by the last.
    if (event->type() != QEvent::Polish && event->type() != QEvent::StyleChange &&
        event->type() != QEvent::PaletteChange)
      return false;
    if (qobject_cast<QLineEdit*>(watched) == nullptr &&
        qobject_cast<QPlainTextEdit*>(watched) == nullptr)
      return false;
    auto* field = static_cast<QWidget*>(watched);
    const QPalette before = field->palette();
    QPalette palette = before;
    for (const auto group : {QPalette::Active, QPalette::Inactive}) {
      QColor hint = palette.color(group, QPalette::Text);
      hint.setAlpha(kAlpha);
      palette.setColor(group, QPalette::PlaceholderText, hint);
    }
    if (palette != before) field->setPalette(palette);
    return false;
  }
};

}  // namespace

void keepHintsReadable() { qApp->installEventFilter(new HintKeeper(qApp)); }

}  // namespace cabwright::drawing
