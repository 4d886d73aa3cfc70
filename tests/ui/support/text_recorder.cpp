// SPDX-License-Identifier: GPL-3.0-or-later
#include "text_recorder.h"

#include <fmt/format.h>

#include <QFontMetricsF>
#include <QPaintEngine>
#include <QPainter>
#include <algorithm>

namespace cabwright::testing_ui {
namespace {

class RecordingEngine : public QPaintEngine {
 public:
  explicit RecordingEngine(TextRecorder* recorder)
      : QPaintEngine(QPaintEngine::AllFeatures), recorder_(recorder) {}

  bool begin(QPaintDevice* /*device*/) override { return true; }
  bool end() override { return true; }
  [[nodiscard]] Type type() const override { return User; }
  void updateState(const QPaintEngineState& now) override {
    if ((now.state() & DirtyTransform) != 0) transform_ = now.transform();
    if ((now.state() & DirtyPen) != 0) color_ = now.pen().color();
  }
  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    // As high as letters are, not as the line is.
    const double size = item.font().pixelSize() > 0 ? item.font().pixelSize() : item.ascent();
    const QRectF box(at.x(), at.y() - 0.74 * size, item.width(), 0.94 * size);
    const QRegion clip = systemClip();
    const QRectF all(QPointF(0, 0), QSizeF(recorder_->size()));
    recorder_->keep({item.text(), transform_.mapRect(box),
                     clip.isEmpty() ? all : QRectF(clip.boundingRect()), color_});
  }
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
  void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {}
  void drawPath(const QPainterPath&) override {}
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}

 private:
  TextRecorder* recorder_;
  QTransform transform_;
  QColor color_ = Qt::black;
};

std::string say(const char* what, const PaintedWords& w) {
  return fmt::format("{}: \"{}\" at {:.0f}, {:.0f}", what, w.text.toStdString(), w.box.left(),
                     w.box.bottom());
}

bool overlap(const QRectF& a, const QRectF& b) {
  const QRectF both = a & b;
  return both.width() > 1 && both.height() > 1.5;
}

}  // namespace

TextRecorder::TextRecorder(QSize size)
    : size_(size), engine_(std::make_unique<RecordingEngine>(this)) {}

TextRecorder::~TextRecorder() = default;

QPaintEngine* TextRecorder::paintEngine() const { return engine_.get(); }

int TextRecorder::metric(PaintDeviceMetric metric) const {
  constexpr int kDpi = 96, kDepth = 32, kMmPerInch = 25;
  switch (metric) {
    case PdmWidth:
      return size_.width();
    case PdmHeight:
      return size_.height();
    case PdmWidthMM:
      return size_.width() * kMmPerInch / kDpi;
    case PdmHeightMM:
      return size_.height() * kMmPerInch / kDpi;
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
      return kDpi;
    case PdmDepth:
      return kDepth;
    case PdmDevicePixelRatio:
      return 1;
    default:
      return QPaintDevice::metric(metric);
  }
}

std::vector<std::string> findCutWords(const std::vector<PaintedWords>& words, QSize window) {
  const QRectF all(QPointF(0, 0), QSizeF(window));
  std::vector<std::string> faults;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const PaintedWords& w = words[i];
    if (w.text.trimmed().isEmpty() || (w.box & w.visible).isEmpty()) continue;
    if (w.text.endsWith(QChar(0x2026)) && !w.text.endsWith(QStringLiteral(" …")))
      faults.push_back(say("elided", w));
    if (!all.adjusted(-1, -1, 1, 1).contains(w.box)) faults.push_back(say("outside", w));
    const QRectF& v = w.visible;
    if (w.box.left() < v.left() - 1.5 || w.box.right() > v.right() + 1.5)
      faults.push_back(
          say("cut", w) +
          fmt::format(" by {:.0f}", std::max(v.left() - w.box.left(), w.box.right() - v.right())));
    for (std::size_t j = i + 1; j < words.size(); ++j)
      if (!words[j].text.trimmed().isEmpty() &&
          overlap(w.box & w.visible, words[j].box & words[j].visible) && w.text != words[j].text)
        faults.push_back(say("over another", w) + " / " + words[j].text.toStdString());
  }
  return faults;
}

}  // namespace cabwright::testing_ui
