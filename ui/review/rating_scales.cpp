// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/rating_scales.h"

#include <QCoreApplication>
#include <string>

namespace cabwright::review_room {
namespace {

constexpr std::array kScales{
    RatingScale{
        "communication",
        QT_TRANSLATE_NOOP("Rating", "Communication"),
        QT_TRANSLATE_NOOP("Rating", "Says what others need to know, and hears what they say"),
        {QT_TRANSLATE_NOOP("Rating", "Says nothing, or what nobody can use"),
         QT_TRANSLATE_NOOP("Rating", "Says some of it, late or not clearly"),
         QT_TRANSLATE_NOOP("Rating", "Says what is needed when asked to"),
         QT_TRANSLATE_NOOP("Rating", "Says what is needed unasked, in plain words"),
         QT_TRANSLATE_NOOP("Rating", "Says it in time and makes sure it was understood")}},
    RatingScale{"planning",
                QT_TRANSLATE_NOOP("Rating", "Planning"),
                QT_TRANSLATE_NOOP("Rating", "Knows what comes next, and gets ready for it"),
                {QT_TRANSLATE_NOOP("Rating", "Does what comes to mind"),
                 QT_TRANSLATE_NOOP("Rating", "Has an order, and loses it"),
                 QT_TRANSLATE_NOOP("Rating", "Keeps to the order that was learned"),
                 QT_TRANSLATE_NOOP("Rating", "Thinks one step ahead"),
                 QT_TRANSLATE_NOOP("Rating", "Thinks ahead, and has a way out ready")}},
    RatingScale{"awareness",
                QT_TRANSLATE_NOOP("Rating", "Awareness"),
                QT_TRANSLATE_NOOP("Rating", "Sees and hears what changes, and knows what it means"),
                {QT_TRANSLATE_NOOP("Rating", "Does not notice what matters"),
                 QT_TRANSLATE_NOOP("Rating", "Notices late, or only when told"),
                 QT_TRANSLATE_NOOP("Rating", "Notices what matters"),
                 QT_TRANSLATE_NOOP("Rating", "Notices soon, and knows why it is so"),
                 QT_TRANSLATE_NOOP("Rating", "Expects it, and looks before it comes")}},
    RatingScale{"handling",
                QT_TRANSLATE_NOOP("Rating", "Handling of the machine"),
                QT_TRANSLATE_NOOP("Rating", "Works with the machine and not against it"),
                {QT_TRANSLATE_NOOP("Rating", "Harms it, or would have"),
                 QT_TRANSLATE_NOOP("Rating", "Rough, or by trial"),
                 QT_TRANSLATE_NOOP("Rating", "As it was taught"),
                 QT_TRANSLATE_NOOP("Rating", "Smooth, with an ear for it"),
                 QT_TRANSLATE_NOOP("Rating", "Smooth also where it does not go as usual")}},
    RatingScale{"calm",
                QT_TRANSLATE_NOOP("Rating", "Calm"),
                QT_TRANSLATE_NOOP("Rating", "Stays able to think when something goes wrong"),
                {QT_TRANSLATE_NOOP("Rating", "Stops working, or acts in haste"),
                 QT_TRANSLATE_NOOP("Rating", "Hurries, and leaves steps out"),
                 QT_TRANSLATE_NOOP("Rating", "Takes a while, then goes on in order"),
                 QT_TRANSLATE_NOOP("Rating", "Goes on in order"),
                 QT_TRANSLATE_NOOP("Rating", "Goes on in order, and calms others")}},
};

constexpr RatingScale kSelf{
    "self",
    QT_TRANSLATE_NOOP("Rating", "How did the run go?"),
    QT_TRANSLATE_NOOP("Rating", "Your own view, before anybody has seen the marks"),
    {QT_TRANSLATE_NOOP("Rating", "Badly: I would not want to do it like that again"),
     QT_TRANSLATE_NOOP("Rating", "Not well: something important went wrong"),
     QT_TRANSLATE_NOOP("Rating", "In part: some of it went well, some of it did not"),
     QT_TRANSLATE_NOOP("Rating", "Well: small things only"),
     QT_TRANSLATE_NOOP("Rating", "Very well: I would do it the same way again")}};

}  // namespace

std::span<const RatingScale> ratingScales() { return kScales; }

const RatingScale& selfScale() { return kSelf; }

QString ratingWord(const char* english) { return QCoreApplication::translate("Rating", english); }

QString scaleTitle(const std::string& id) {
  for (const RatingScale& scale : kScales)
    if (id == scale.id) return ratingWord(scale.title);
  return QString::fromStdString(id);
}

}  // namespace cabwright::review_room
