// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/why_panel.h"

#include <QMouseEvent>
#include <algorithm>

#include "cab/names.h"

namespace cabwright::cab {
namespace {

using unit::Control;
using unit::Signal;

constexpr int kStep = 24;  // px a press of an arrow key

std::vector<unit::WhyFact> factsOf(const Seat& seat, const WhyAsked& asked) {
  if (const auto* lamp = std::get_if<Signal>(&asked))
    return unit::calcWhyOfLamp(seat.unit(), *lamp);
  const auto of = unit::findWhyOf(std::get<Control>(asked));
  return of ? unit::calcWhy(seat.unit(), of->outcome, of->cab, of->line)
            : std::vector<unit::WhyFact>();
}

}  // namespace

bool hasWhy(const WhyAsked& asked) {
  return std::visit([](auto of) { return unit::findWhyOf(of).has_value(); }, asked);
}

WhyPanel::WhyPanel(Seat& seat, const SheetStyle& style, WhyAsked asked, QWidget* parent)
    : Panel(seat, style, QString(), parent), asked_(asked), words_(new QLabel(this)) {
  words_->setTextFormat(Qt::RichText);
  words_->setWordWrap(true);
  column()->addWidget(words_);
  setCursor(Qt::SizeAllCursor);
  setToolTip(tr("Drag it, or move it with the arrow keys."));
  setAccessibleDescription(tr("The arrow keys move it."));
  for (QLabel* label : findChildren<QLabel*>())
    label->setAttribute(Qt::WA_TransparentForMouseEvents);
  refresh();
}

const unit::WhyFact* WhyPanel::missing() const {
  const auto first = std::ranges::find_if(facts_, [](const unit::WhyFact& f) { return !f.there; });
  return first == facts_.end() ? nullptr : &*first;
}

QString WhyPanel::question() const {
  if (const auto* lamp = std::get_if<Signal>(&asked_))
    return seat().value(*lamp) > 0.5 ? tr("Why is it lit?") : tr("Why is it dark?");
  const QString name = nameOf(std::get<Control>(asked_));
  return missing() != nullptr ? tr("%1: what is missing?").arg(name)
                              : tr("%1: nothing is missing").arg(name);
}

void WhyPanel::moveBy(QPoint way) {
  const QRect room(QPoint(), parentWidget()->size() - size());
  const QPoint to(std::clamp((pos() + way).x(), 0, std::max(0, room.width())),
                  std::clamp((pos() + way).y(), 0, std::max(0, room.height())));
  if (to == pos()) return;
  move(to);
  Q_EMIT moved();
}

void WhyPanel::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      return moveBy({-kStep, 0});
    case Qt::Key_Right:
      return moveBy({kStep, 0});
    case Qt::Key_Up:
      return moveBy({0, -kStep});
    case Qt::Key_Down:
      return moveBy({0, kStep});
    default:
      Panel::keyPressEvent(event);
  }
}

void WhyPanel::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) held_ = event->position().toPoint();
  event->accept();  // nothing below it is meant
}

void WhyPanel::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons().testFlag(Qt::LeftButton)) moveBy(event->position().toPoint() - held_);
}

bool WhyPanel::refresh() {
  facts_ = factsOf(seat(), asked_);
  QStringList plain, rich;
  const unit::WhyFact* first = missing();
  for (const unit::WhyFact& fact : facts_) {
    const QString words = translateSeen(QString::fromStdString(fact.text()));
    const QString line = (fact.there ? QStringLiteral("✓ ") : QStringLiteral("✗ ")) + words;
    plain << line;
    rich << (&fact == first ? QStringLiteral("<b>%1</b>").arg(line.toHtmlEscaped())
                            : line.toHtmlEscaped());
  }
  const QString text = question() + QLatin1Char('\n') + plain.join(QLatin1Char('\n'));
  if (text == shown_) return false;
  shown_ = text;
  findChild<QLabel*>(QStringLiteral("title"))->setText(question());
  words_->setText(rich.join(QStringLiteral("<br>")));
  words_->setAccessibleName(plain.join(QLatin1Char('\n')));
  setAccessibleName(question());
  adjustSize();
  return true;
}

}  // namespace cabwright::cab
