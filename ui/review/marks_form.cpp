// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_form.h"

#include <QKeyEvent>
#include <QShortcut>
#include <algorithm>

#include "after/words.h"
#include "review_room/marks_flow.h"

namespace cabwright::review_room {

namespace {

constexpr double kWidest = 680;  ///< u; longer lines are hard to read
constexpr const char* kAnyWidth = "any_width";

// Keeps lines short in a wide window. By a margin and not by a greatest width: a layout asks for
// the height of the width it has, and words below would be cut.
class ShortLines : public QObject {
 public:
  ShortLines(const after::SheetLook& look, QWidget* form) : QObject(form), look_(look) {
    form->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    const auto* form = static_cast<QWidget*>(watched);
    if (event->type() == QEvent::Resize && !form->property(kAnyWidth).toBool()) {
      const int over = form->contentsRect().width() - toPixels(kWidest, look_);
      form->layout()->setContentsMargins(0, 0, std::max(0, over), 0);
    }
    return QObject::eventFilter(watched, event);
  }

 private:
  const after::SheetLook& look_;
};

}  // namespace

QString refusalText(const Opened& opened, const std::optional<std::string>& fault) {
  if (!fault) return {};
  std::string_view words = *fault;
  const std::string file = opened.file().string() + ": ";
  if (words.starts_with(file)) words.remove_prefix(file.size());
  QString text = after::sheetWords(words);
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text.endsWith(QLatin1Char('.')) ? text : text + QLatin1Char('.');
}

MarkForm::MarkForm(const after::SheetLook& look, Opened& opened, const QString& name,
                   QWidget* parent)
    : QWidget(parent), look_(look), opened_(opened), column_(new QVBoxLayout(this)) {
  setAccessibleName(name);
  column_->setContentsMargins(0, 0, 0, 0);
  column_->setSpacing(6);
  new ShortLines(look, this);
  for (const int key : {Qt::Key_Return, Qt::Key_Enter}) {
    auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(key)), this);
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    connect(shortcut, &QShortcut::activated, this, &MarkForm::act);
  }
}

void MarkForm::restyle() {
  for (QPlainTextEdit* text : findChildren<QPlainTextEdit*>()) fitText(text, look_);
}

QString MarkForm::refusal() const { return refused_ ? said_->text() : QString(); }

void MarkForm::act() {
  const QString why_not = tryIt();
  say(why_not, true);
  if (why_not.isEmpty()) Q_EMIT done();
}

void MarkForm::say(const QString& words, bool refused) {
  refused_ = refused && !words.isEmpty();
  said_->setText(words);
  said_->setVisible(!words.isEmpty());
  setKind(said_, refused ? WordsKind::kRefusal : WordsKind::kDone);
  said_->setAccessibleName(words);
}

void MarkForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT cancelled();
    return;
  }
  QWidget::keyPressEvent(event);
}

void MarkForm::addFoot(const QString& do_words, const QString& object_name, bool can_be_left) {
  said_ = makeWords({}, WordsKind::kRefusal, this);
  said_->setObjectName(object_name + QLatin1String("_said"));
  said_->hide();
  column_->addWidget(said_);
  auto* row = new FlowRow;
  do_ = new MarkButton(look_, do_words, object_name, this);
  do_->setStrong(true);
  connect(do_, &QAbstractButton::clicked, this, &MarkForm::act);
  row->addWidget(do_);
  if (can_be_left) {
    auto* leave =
        new MarkButton(look_, tr("Leave it"), object_name + QLatin1String("_leave"), this);
    connect(leave, &QAbstractButton::clicked, this, &MarkForm::cancelled);
    row->addWidget(leave);
  }
  column_->addLayout(row);
}

QButtonGroup* MarkForm::addChoice(const QString& caption, const QStringList& words,
                                  const QString& object_name) {
  if (!caption.isEmpty()) column_->addWidget(makeWords(caption, WordsKind::kSecond, this));
  auto* group = new QButtonGroup(this);
  auto* row = new FlowRow;
  for (qsizetype k = 0; k < words.size(); ++k) {
    auto* button = new MarkButton(look_, words[k], object_name + QString::number(k), this);
    button->setCheckable(true);
    if (!caption.isEmpty()) button->setAccessibleName(caption + QLatin1String(": ") + words[k]);
    group->addButton(button, static_cast<int>(k));
    row->addWidget(button);
  }
  column_->addLayout(row);
  return group;
}

}  // namespace cabwright::review_room
