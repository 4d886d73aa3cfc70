// SPDX-License-Identifier: GPL-3.0-or-later
// A row that goes on in the next line when its parts do not fit: in another language words are
// longer.
#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace cabwright::review_room {

class FlowRow : public QLayout {
  Q_OBJECT
 public:
  explicit FlowRow(int gap_px = 6) : gap_(gap_px) { setContentsMargins(0, 0, 0, 0); }
  ~FlowRow() override;

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override {
    return arrange({0, 0, width, 0}, false);
  }
  [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  int arrange(const QRect& rect, bool moves) const;
  std::vector<QLayoutItem*> items_;
  int gap_;
};

}  // namespace cabwright::review_room
