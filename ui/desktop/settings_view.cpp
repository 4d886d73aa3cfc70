// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/settings_view.h"

#include <QCoreApplication>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QKeySequenceEdit>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "cab/panels.h"
#include "drawing/boxes.h"
#include "drawing/pen.h"

namespace cabwright::desktop {

using drawing::Tone;

namespace {

constexpr int kBetween = 14;  // px, of what stands one below the other

// Takes any key but Escape, which leaves the page from here as from everywhere.
class KeyBox final : public QKeySequenceEdit {
 public:
  using QKeySequenceEdit::QKeySequenceEdit;

 protected:
  void keyPressEvent(QKeyEvent* event) override {
    if (event->key() == Qt::Key_Escape) {
      event->ignore();
    } else {
      QKeySequenceEdit::keyPressEvent(event);
    }
  }
};

}  // namespace

SettingsView::SettingsView(Preferences& preferences, cab::Shortcuts& shortcuts,
                           review_room::LockKeeper& keeper, QWidget* parent)
    : QWidget(parent),
      preferences_(preferences),
      shortcuts_(shortcuts),
      look_(new drawing::ChoiceBox(this)),
      language_(new drawing::ChoiceBox(this)),
      calm_(new drawing::TickBox(tr("Less &movement: needles and levers jump, nothing scrolls"),
                                 this)),
      caps_(new drawing::TickBox(tr("&Keys are shown beside what they move"), this)),
      silent_(new drawing::TickBox(tr("S&ilent"), this)),
      volume_(new QSlider(Qt::Horizontal, this)),
      sessions_(new QLineEdit(this)),
      keys_(new QTableWidget(this)),
      lock_(new review_room::LockForm(keeper, this)),
      note_(new QLabel(this)) {
  setAccessibleName(tr("Settings"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(32, 28, 32, 24);
  row->setSpacing(32);
  auto* left = new QVBoxLayout;
  auto* right = new QVBoxLayout;
  left->setSpacing(kBetween);
  right->setSpacing(kBetween);
  row->addLayout(left, 4);
  row->addLayout(right, 5);
  makeLooks(left);
  makeKeys(right);
  setFocusProxy(look_);
}

void SettingsView::makeLooks(QVBoxLayout* column) {
  auto* heading = new QLabel(tr("Settings"), this);
  heading->setObjectName(QStringLiteral("heading"));
  column->addWidget(heading);
  auto* form = new QFormLayout;
  form->setVerticalSpacing(kBetween);
  form->setHorizontalSpacing(2 * kBetween);
  look_->addItems({tr("As the system has it"), tr("Day"), tr("Night")});
  form->addRow(tr("&Light"), look_);
  language_->addItem(tr("The system's"), QString());
  language_->addItem(QStringLiteral("English"), QStringLiteral("en"));
  language_->addItem(QStringLiteral("Deutsch"), QStringLiteral("de"));
  form->addRow(tr("&Language"), language_);
  volume_->setRange(0, 100);
  volume_->setAccessibleName(tr("Volume"));
  form->addRow(tr("&Volume"), volume_);
  sessions_->setPlaceholderText(tr("the standard folder for data"));
  form->addRow(tr("&Sessions go to"), sessions_);
  column->addLayout(form);
  for (QCheckBox* box : {silent_, caps_, calm_}) column->addWidget(box);
  auto* language_note = new QLabel(tr("Another language is used after the next start."), this);
  language_note->setObjectName(QStringLiteral("second"));
  language_note->setWordWrap(true);
  column->addWidget(language_note);
  column->addSpacing(10);
  auto* who = new QLabel(tr("Who may open desk and review"), this);
  who->setObjectName(QStringLiteral("title"));
  column->addWidget(who);
  column->addWidget(lock_);
  column->addStretch(1);
  auto* close = new QPushButton(tr("&Close"), this);
  close->setDefault(true);
  connect(close, &QPushButton::clicked, this, &SettingsView::closed);
  column->addWidget(close, 0, Qt::AlignLeft);
  connect(look_, &QComboBox::currentIndexChanged, this, &SettingsView::take);
  connect(language_, &QComboBox::currentIndexChanged, this, &SettingsView::take);
  connect(volume_, &QSlider::valueChanged, this, &SettingsView::take);
  connect(sessions_, &QLineEdit::editingFinished, this, &SettingsView::take);
  for (QCheckBox* box : {silent_, caps_, calm_})
    connect(box, &QCheckBox::toggled, this, &SettingsView::take);
}

void SettingsView::makeKeys(QVBoxLayout* column) {
  auto* heading = new QLabel(tr("Keys"), this);
  heading->setObjectName(QStringLiteral("heading"));
  column->addWidget(heading);
  auto* how = new QLabel(
      tr("Tab goes from thing to thing; the arrow keys move a lever, Space or Enter presses, "
         "Escape takes the hand away. On a thing to look at: Enter looks, then G good, D defect "
         "(C, S or T: how grave), U not sure. With the mouse: the right button leaves a hand on "
         "what springs back, and takes it off again. A key below brings a hand straight to it; "
         "click one to choose another. Start, stop and letting go lie side by side, as the "
         "buttons do: their keys go by place, whatever letter your keyboard has there."),
      this);
  how->setObjectName(QStringLiteral("second"));
  how->setWordWrap(true);
  column->addWidget(how);
  keys_->setColumnCount(2);
  keys_->setHorizontalHeaderLabels({tr("What it does"), tr("Key")});
  keys_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  keys_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  keys_->verticalHeader()->hide();
  keys_->setSelectionMode(QAbstractItemView::NoSelection);
  keys_->setAccessibleName(tr("Keys"));
  column->addWidget(keys_, 1);
  note_->setObjectName(QStringLiteral("second"));
  note_->setWordWrap(true);
  column->addWidget(note_);
  auto* reset = new QPushButton(tr("&All keys as at first"), this);
  connect(reset, &QPushButton::clicked, this, [this] {
    shortcuts_.reset();
    fillKeys();
    Q_EMIT changed();
  });
  column->addWidget(reset, 0, Qt::AlignRight);
}

// The boxes stay the same ones: whoever types in one keeps the focus when another loses its key.
void SettingsView::fillKeys() {
  const auto commands = cab::commandTable();
  if (keys_->rowCount() == 0) makeKeyBoxes();
  int row = 0;
  for (const cab::CommandInfo& info : commands) {
    auto* edit = qobject_cast<QKeySequenceEdit*>(keys_->cellWidget(row++, 1));
    const QKeySequence now = shortcuts_.shown(QString::fromLatin1(info.id));
    const QSignalBlocker quiet(edit);
    if (edit->keySequence() != now) edit->setKeySequence(now);
  }
}

void SettingsView::makeKeyBoxes() {
  const auto commands = cab::commandTable();
  keys_->setRowCount(static_cast<int>(commands.size()));
  int row = 0;
  for (const cab::CommandInfo& info : commands) {
    const QString id = QString::fromLatin1(info.id);
    auto* words = new QTableWidgetItem(QCoreApplication::translate("Command", info.text));
    words->setFlags(Qt::ItemIsEnabled);
    keys_->setItem(row, 0, words);
    auto* edit = new KeyBox(shortcuts_.shown(id), keys_);
    edit->setAccessibleName(words->text());
    connect(edit, &QKeySequenceEdit::editingFinished, this, [this, edit, id] {
      const QKeySequence all = edit->keySequence();
      const QKeySequence first = all.isEmpty() ? QKeySequence() : QKeySequence(all[0]);
      if (first == shortcuts_.shown(id)) return;
      const QString loser = shortcuts_.setKeys(id, first);
      note_->setText(loser.isEmpty() ? QString()
                                     : tr("That key is taken away from another command."));
      Q_EMIT changed();
      fillKeys();
    });
    keys_->setCellWidget(row, 1, edit);
    ++row;
  }
}

void SettingsView::show(const Preferences& p) {
  filling_ = true;
  look_->setCurrentIndex(static_cast<int>(p.theme));
  language_->setCurrentIndex(std::max(0, language_->findData(p.language)));
  volume_->setValue(static_cast<int>(std::lround(p.volume * 100)));
  silent_->setChecked(p.muted);
  caps_->setChecked(p.show_keys);
  calm_->setChecked(p.reduced_motion);
  sessions_->setText(p.sessions);
  fillKeys();
  lock_->refresh();
  filling_ = false;
}

void SettingsView::take() {
  if (filling_) return;
  preferences_.theme = static_cast<ThemeChoice>(look_->currentIndex());
  preferences_.language = language_->currentData().toString();
  preferences_.volume = volume_->value() / 100.0;
  preferences_.muted = silent_->isChecked();
  preferences_.show_keys = caps_->isChecked();
  preferences_.reduced_motion = calm_->isChecked();
  preferences_.sessions = sessions_->text().trimmed();
  Q_EMIT changed();
}

void SettingsView::setTheme(drawing::Theme theme) {
  theme_ = theme;
  const int px = std::max(14, fontInfo().pixelSize());
  setStyleSheet(
      cab::panelStyle(theme, px) +
      QStringLiteral("QWidget { background: %1; } QLabel#heading { font-size: %2px; }"
                     "QHeaderView::section { background: %1; border: none; padding: 4px 2px;"
                     " color: %3; } QTableView { gridline-color: %4; }")
          .arg(drawing::colorOf(theme, Tone::kPaper).name(), QString::number(px * 17 / 10),
               drawing::colorOf(theme, Tone::kInk2).name(),
               drawing::colorOf(theme, Tone::kHair).name()));
  update();
}

void SettingsView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT closed();
  } else {
    QWidget::keyPressEvent(event);
  }
}

void SettingsView::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(theme_, Tone::kPaper));
  drawing::Pen pen(painter, theme_);
  pen.rect(QRectF(rect()).adjusted(12, 10, -12, -10), {1.5, Tone::kInk, {}, false});
}

}  // namespace cabwright::desktop
