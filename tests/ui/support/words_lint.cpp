// SPDX-License-Identifier: GPL-3.0-or-later
#include "words_lint.h"

#include <fmt/format.h>

#include <QImage>
#include <algorithm>
#include <map>

namespace cabwright::testing_ui {
namespace {

using drawing::SetWords;
using drawing::Theme;
using drawing::Tone;

constexpr double kBorder = 24, kLeastContrast = 4.5, kMostForeign = 0.012;

struct Sheet {
  QImage with_words, lines_only;
  std::vector<SetWords> words;
};

QImage render(const PaintSheet& paint, QSizeF window, Theme theme, std::vector<SetWords>* note) {
  QImage image(window.toSize(), QImage::Format_RGB32);
  image.fill(drawing::colorOf(theme, Tone::kPaper));
  QPainter painter(&image);
  const drawing::SheetFrame frame = drawing::calcSheetFrame(window);
  painter.setTransform(frame.toWindow());
  drawing::Pen pen(painter, theme);
  pen.noteWords(note);
  pen.leaveWordsOut(note == nullptr);
  paint(pen, frame);
  return image;
}

std::string say(const char* what, const SetWords& w) {
  return fmt::format("{}: \"{}\" at {:.0f}, {:.0f}", what, w.text.toStdString(), w.box.left(),
                     w.box.bottom());
}

int apart(QRgb a, QRgb b) {
  return std::abs(qRed(a) - qRed(b)) + std::abs(qGreen(a) - qGreen(b)) +
         std::abs(qBlue(a) - qBlue(b));
}

template <typename Visit>
void forEachPixel(const QImage& image, const QRectF& box, Visit visit) {
  const QRect pixels = box.toAlignedRect() & image.rect();
  for (int y = pixels.top(); y <= pixels.bottom(); ++y)
    for (int x = pixels.left(); x <= pixels.right(); ++x) visit(image.pixel(x, y));
}

// What most of the box shows is what the word stands on.
bool standsOn(const QImage& image, const SetWords& w, Theme theme) {
  std::map<QRgb, int> count;
  forEachPixel(image, w.box, [&](QRgb pixel) { ++count[pixel]; });
  if (count.empty()) return false;
  const auto most =
      std::ranges::max_element(count, {}, [](const auto& entry) { return entry.second; });
  return apart(most->first, drawing::colorOf(theme, w.on).rgb()) < 12;
}

double foreignShare(const QImage& lines_only, const SetWords& w, Theme theme) {
  const QRgb ground = drawing::colorOf(theme, w.on).rgb();
  const QRectF core = w.box.adjusted(0, 0.02 * w.size_px, 0, -0.16 * w.size_px);
  int all = 0, foreign = 0;
  forEachPixel(lines_only, core, [&](QRgb pixel) {
    ++all;
    if (apart(pixel, ground) > 90) ++foreign;
  });
  return all == 0 ? 0 : static_cast<double>(foreign) / all;
}

bool overlap(const QRectF& a, const QRectF& b) {
  const QRectF both = a & b;
  return both.width() > 1 && both.height() > 1.5;
}

void checkOne(const Sheet& sheet, const SetWords& w, const drawing::SheetFrame& frame, Theme theme,
              std::vector<std::string>& faults) {
  const QRectF inside(kBorder, kBorder, frame.width - 2 * kBorder, frame.height - 2 * kBorder);
  if (w.size_px < drawing::kText * frame.scale - 0.01) faults.push_back(say("too small", w));
  if (!frame.toWindow().mapRect(inside).contains(w.box)) faults.push_back(say("outside", w));
  const double contrast =
      drawing::calcContrast(drawing::colorOf(theme, w.tone), drawing::colorOf(theme, w.on));
  if (contrast < kLeastContrast) faults.push_back(say("too pale", w));
  if (!standsOn(sheet.with_words, w, theme)) faults.push_back(say("not on what it says", w));
  if (!w.halo && foreignShare(sheet.lines_only, w, theme) > kMostForeign)
    faults.push_back(say("crossed by a line", w));
}

}  // namespace

std::vector<std::string> findWordFaults(const PaintSheet& paint, QSizeF window, Theme theme,
                                        int* counted) {
  Sheet sheet;
  sheet.with_words = render(paint, window, theme, &sheet.words);
  sheet.lines_only = render(paint, window, theme, nullptr);
  const drawing::SheetFrame frame = drawing::calcSheetFrame(window);
  std::vector<std::string> faults;
  for (std::size_t i = 0; i < sheet.words.size(); ++i) {
    checkOne(sheet, sheet.words[i], frame, theme, faults);
    for (std::size_t j = i + 1; j < sheet.words.size(); ++j)
      if (overlap(sheet.words[i].box, sheet.words[j].box))
        faults.push_back(say("over another", sheet.words[i]) + " / " +
                         sheet.words[j].text.toStdString());
  }
  if (counted != nullptr) *counted = static_cast<int>(sheet.words.size());
  return faults;
}

}  // namespace cabwright::testing_ui
