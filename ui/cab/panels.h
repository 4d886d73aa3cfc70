// SPDX-License-Identifier: GPL-3.0-or-later
// Small panels that open over the sheet and stop nothing: what to say, a reading to enter, the
// repair book, a decision, what to do with a thing. Escape closes them.
#pragma once

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include "cab/part.h"

namespace cabwright::cab {

/// Colours and face of the sheet for ordinary widgets; `text_px` the height of the type.
[[nodiscard]] QString panelStyle(drawing::Theme theme, int text_px);

class Panel : public QFrame {
  Q_OBJECT
 public:
  Panel(Seat& seat, const SheetStyle& style, const QString& title, QWidget* parent);
  /// The keys go here first.
  virtual void takeFocus() = 0;
  /// Colours and size of the sheet.
  void restyle();

 Q_SIGNALS:
  void closed();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  [[nodiscard]] Seat& seat() const { return seat_; }
  [[nodiscard]] QVBoxLayout* column() const { return column_; }
  void addText(const QString& words);
  void addButtons(const QString& act, const std::function<void()>& done);

 private:
  Seat& seat_;
  const SheetStyle& style_;
  QVBoxLayout* column_;
  QPushButton* go_ = nullptr;  ///< does what the panel is for
};

/// Everything that can be said and done with nothing but voice and eyes; all alike, in a fixed
/// order, whatever fits.
class SayPanel : public Panel {
  Q_OBJECT
 public:
  SayPanel(Seat& seat, const SheetStyle& style, QWidget* parent);
  void takeFocus() override { list_->setFocus(); }
  [[nodiscard]] QListWidget* list() const { return list_; }

 private:
  void useCurrent();
  QListWidget* list_;
};

class ReadingPanel : public Panel {
  Q_OBJECT
 public:
  ReadingPanel(Seat& seat, const SheetStyle& style, QWidget* parent);
  void takeFocus() override { what_->setFocus(); }

 private:
  QComboBox* what_;
  QDoubleSpinBox* value_;
};

class BookPanel : public Panel {
  Q_OBJECT
 public:
  BookPanel(Seat& seat, const SheetStyle& style, QWidget* parent);
  void takeFocus() override { text_->setFocus(); }

 private:
  QComboBox* item_;
  QLineEdit* text_;
};

class DecisionPanel : public Panel {
  Q_OBJECT
 public:
  DecisionPanel(Seat& seat, const SheetStyle& style, QWidget* parent);
  void takeFocus() override { choice_->setFocus(); }

 private:
  QListWidget* choice_;
  QLineEdit* reason_;
};

/// What can be done here with one loose thing, or with each of them.
class ThingPanel : public Panel {
  Q_OBJECT
 public:
  ThingPanel(Seat& seat, const SheetStyle& style, std::optional<unit::Object> only,
             QWidget* parent);
  void takeFocus() override { list_->setFocus(); }

 private:
  struct Deed {
    std::string verb, object, argument;
  };
  void addDeeds(unit::Object object);
  QListWidget* list_;
  std::vector<Deed> deeds_;
};

}  // namespace cabwright::cab
