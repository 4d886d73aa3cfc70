// SPDX-License-Identifier: GPL-3.0-or-later
// A paint device that keeps the words that are painted on it, and where.
#pragma once

#include <QColor>
#include <QPaintDevice>
#include <QRectF>
#include <QSize>
#include <QString>
#include <memory>
#include <vector>

namespace cabwright::testing_ui {

struct PaintedWords {
  QString text;
  QRectF box;      ///< pixels of the device
  QRectF visible;  ///< what the widget that painted them may paint on
  QColor color = {};
};

class TextRecorder : public QPaintDevice {
 public:
  explicit TextRecorder(QSize size);
  ~TextRecorder() override;
  TextRecorder(const TextRecorder&) = delete;
  TextRecorder& operator=(const TextRecorder&) = delete;

  [[nodiscard]] QPaintEngine* paintEngine() const override;
  [[nodiscard]] const std::vector<PaintedWords>& words() const { return words_; }
  void keep(PaintedWords words) { words_.push_back(std::move(words)); }
  [[nodiscard]] QSize size() const { return size_; }

 protected:
  [[nodiscard]] int metric(PaintDeviceMetric metric) const override;

 private:
  QSize size_;
  std::vector<PaintedWords> words_;
  std::unique_ptr<QPaintEngine> engine_;
};

/// What is wrong with words: cut off with an ellipsis, cut by the edge of what they stand on,
/// outside the window, one over another; in plain words. `counted` takes their number.
[[nodiscard]] std::vector<std::string> findCutWords(const std::vector<PaintedWords>& words,
                                                    QSize window);

}  // namespace cabwright::testing_ui
