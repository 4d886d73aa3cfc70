// SPDX-License-Identifier: GPL-3.0-or-later
// Every signal of a run to choose from: found by any part of its words, its name, its unit or its
// layer; chosen ones bear the line they are drawn with.
#pragma once

#include <QAbstractListModel>
#include <QListView>
#include <vector>

#include "after/sheet_look.h"
#include "after/strip_model.h"

namespace cabwright::desk {

class SignalListModel : public QAbstractListModel {
  Q_OBJECT
 public:
  explicit SignalListModel(QObject* parent);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

  /// Only those that hold every word of it; empty: all.
  void setSearch(const QString& words);
  void setOnlyChosen(bool only);
  /// What is on the strip, and how each is drawn.
  void setChosen(const std::vector<after::Plot>& plots);

  [[nodiscard]] unit::Signal signalAt(int row) const;
  [[nodiscard]] const after::Curve* findCurve(unit::Signal signal) const;
  [[nodiscard]] QString wordsOf(unit::Signal signal) const;    ///< what it is
  [[nodiscard]] QString detailsOf(unit::Signal signal) const;  ///< layer, unit, name

 Q_SIGNALS:
  void asked(cabwright::unit::Signal signal, bool wanted);

 private:
  struct Row {
    QString words, details, key;  ///< key: all that is searched, small letters
  };
  void filter();
  std::vector<Row> rows_;  ///< by number of the signal
  std::vector<unit::Signal> visible_;
  std::vector<after::Curve> chosen_;
  QString search_;
  bool only_chosen_ = false;
};

/// Enter, Space or a click puts a signal on the strip or takes it off.
class SignalList : public QListView {
  Q_OBJECT
 public:
  SignalList(const after::SheetLook& look, SignalListModel& model, QWidget* parent);
  void restyle();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;

 private:
  void toggle(const QModelIndex& index);
  SignalListModel& model_;
};

}  // namespace cabwright::desk
