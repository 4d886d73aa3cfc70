// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/style.h"

#include <cmath>
#include <initializer_list>
#include <utility>

#include "drawing/face.h"

namespace cabwright::drawing {
namespace {

constexpr const char* kCommon =
    "QWidget { color: @ink; font-family: '@family'; font-size: @text; }"
    "QLabel#second { color: @ink2; } QLabel#heading { font-weight: bold; }"
    "QLabel#title { font-size: @title; } QLabel#bad { color: @bad; }"
    // Fields.
    "QListWidget, QLineEdit, QComboBox, QAbstractSpinBox, QPlainTextEdit { background: @face;"
    " border: 1px solid @rule; border-radius: 3px; padding: 3px 5px;"
    " selection-background-color: @wash; selection-color: @ink; }"
    "QListWidget:focus, QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus,"
    " QPlainTextEdit:focus { border: 2px solid @hand; padding: 2px 4px; }"
    "QComboBox:disabled, QAbstractSpinBox:disabled { color: @ink2; }"
    "QListWidget::item { padding: 3px 1px; border-bottom: 1px solid @hair; }"
    "QListWidget::item:selected { background: @wash; color: @ink; }"
    "QComboBox::drop-down { border: none; width: 20px; }"
    "QComboBox::down-arrow { image: none; }"
    "QComboBox QAbstractItemView { background: @face; color: @ink;"
    " selection-background-color: @wash; selection-color: @ink; }"
    "QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { width: 0; border: none; }"
    // Buttons and ticks.
    "QPushButton { background: @face; border: 1px solid @ink; border-radius: 4px;"
    " padding: 4px 12px; outline: none; }"  // its border says the focus
    "QPushButton:default { font-weight: bold; }"
    "QPushButton:disabled { color: @ink2; border-color: @rule; }"
    "QPushButton:checked { background: @ink; color: @paper; }"
    "QPushButton:hover:!checked, QPushButton:pressed { background: @wash; color: @ink; }"
    "QPushButton:focus { border: 3px solid @hand; padding: 2px 10px; }"
    "QCheckBox { spacing: 7px; }"
    "QCheckBox::indicator { width: 14px; height: 14px; border: 2px solid @ink2;"
    " border-radius: 3px; background: @face; }"
    "QCheckBox::indicator:checked { background: @hand; border-color: @hand; }"
    "QCheckBox::indicator:focus { border-color: @hand; }"
    // Tabs, tables, bars.
    "QTabBar { background: transparent; }"
    "QTabBar::tab { background: @paper; color: @ink; padding: 4px 12px; margin-right: 2px;"
    " border: 1px solid @rule; border-bottom: 2px solid @ink; }"
    "QTabBar::tab:selected { background: @face; font-weight: bold; border: 2px solid @ink;"
    " border-bottom: 2px solid @face; }"
    "QTabBar::tab:focus { color: @hand; }"
    "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; border: none; }"
    "QScrollBar:vertical { background: transparent; width: 12px; margin: 0; border: none; }"
    "QScrollBar::handle:vertical { background: @rule; border-radius: 4px; min-height: 32px;"
    " margin: 1px; }"
    "QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; border: none; }"
    "QScrollBar::handle:horizontal { background: @rule; border-radius: 4px; min-width: 32px;"
    " margin: 1px; }"
    "QScrollBar::handle:disabled { background: transparent; }"
    "QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }"
    "QScrollBar::add-page, QScrollBar::sub-page { background: none; }"
    "QProgressBar { background: @face; border: 1px solid @rule; border-radius: 3px;"
    " text-align: center; }"
    "QProgressBar::chunk { background: @wash; }"
    "QSplitter::handle { background: transparent; }"
    "QToolTip { background: @face; color: @ink; border: 1px solid @ink; }";

}  // namespace

QString fillStyle(QString sheet, Theme theme, int text_px) {
  // Those that begin like another one come before it.
  const std::initializer_list<std::pair<const char*, Tone>> tones{
      {"@paper", Tone::kPaper}, {"@face", Tone::kFace}, {"@ink2", Tone::kInk2},
      {"@ink", Tone::kInk},     {"@wash", Tone::kWash}, {"@hand", Tone::kHand},
      {"@good", Tone::kGood},   {"@bad", Tone::kBad},   {"@doubt", Tone::kDoubt},
      {"@rule", Tone::kRule},   {"@hair", Tone::kHair}};
  sheet.replace(QLatin1String("@family"), faceName());
  for (const auto& [word, tone] : tones)
    sheet.replace(QLatin1String(word), colorOf(theme, tone).name());
  const std::initializer_list<std::pair<const char*, double>> sizes{
      {"@text", kText}, {"@title", kTitle}, {"@name", kName}, {"@result", kResult}};
  for (const auto& [word, u] : sizes)
    sheet.replace(QLatin1String(word),
                  QString::number(std::lround(text_px * u / kText)) + QLatin1String("px"));
  return sheet;
}

QString commonStyle(Theme theme, int text_px) {
  return fillStyle(QString::fromLatin1(kCommon), theme, text_px);
}

}  // namespace cabwright::drawing
