// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/entry.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace cabwright::review {
namespace {

using marking::Outcome;

const std::vector<Content> kAll{Override{"pawl", "broken", Outcome::kMet, "it stuck"},
                                Override{"pawl", "broken", std::nullopt, "a fault of ours"},
                                Rating{"planning", 4, ""},
                                Comment{"", std::nullopt, "well \"done\"\n"},
                                Comment{"gear", 4211, "look here"},
                                SelfRating{3, "unsure of the brake"},
                                ScoreShown{},
                                BlindMark{"gear", Outcome::kNotExercised},
                                Decision{Result::kNotYet, "one more run", "on Friday"},
                                SignOff{"as seen"}};

TEST(Entry, IsReadBackAsItWasWritten) {
  for (const Content& content : kAll) {
    const auto read = readContent(kindOf(content), bodyOf(content));
    ASSERT_TRUE(read) << kindOf(content);
    EXPECT_EQ(*read, content) << kindOf(content);
    EXPECT_NE(describe(content), "");
  }
}

TEST(Entry, OfAKindThatIsNotKnownIsKeptAsSuch) {
  EXPECT_EQ(readContent("omen", "what"), Content(Unknown{"omen"}));
}

TEST(Entry, IsRefusedWhenItsBodyIsNoneOfItsKind) {
  for (const std::string bad :
       {"", "{", "[]", "null", "7", R"({"scale":"x","value":4})",
        R"({"scale":"x","value":"4","comment":""})", R"({"scale":"x","value":0,"comment":""})",
        R"({"scale":"x","value":6,"comment":""})", R"({"scale":"x","value":4.5,"comment":""})",
        R"({"scale":"x","value":99999999999999999999,"comment":""})",
        R"({"scale":null,"value":4,"comment":""})",
        R"({"scale":"x","value":4,"comment":"","more":1})"})
    EXPECT_FALSE(readContent("rating", bad)) << bad;
  EXPECT_TRUE(readContent("rating", R"({"scale":"x","value":4,"comment":""})"));
  EXPECT_FALSE(
      readContent("override", R"({"rule":"a","old_verdict":"b","outcome":"nice","reason":"c"})"));
  EXPECT_FALSE(readContent("decision", R"({"result":"maybe","reason":"","next":""})"));
  EXPECT_FALSE(readContent("signature", R"({"statement":")" + std::string(10'001, 'x') + "\"}"));
  EXPECT_FALSE(readContent("signature", std::string(50'000, '[')));
}

TEST(Entry, AnyBytesAreReadOrRefusedButNeverMore) {
  EXPECT_TRUE(rc::check("hostile bodies", [](const std::string& body) {
    for (const Content& content : kAll) static_cast<void>(readContent(kindOf(content), body));
  }));
  EXPECT_TRUE(rc::check("a body with a byte changed", [] {
    std::string body = bodyOf(*rc::gen::elementOf(kAll));
    const auto at = *rc::gen::inRange<std::size_t>(0, body.size());
    body[at] = *rc::gen::arbitrary<char>();
    for (const Content& content : kAll) {
      const auto read = readContent(kindOf(content), body);
      if (read) RC_ASSERT(readContent(kindOf(*read), bodyOf(*read)).has_value());
    }
  }));
}

}  // namespace
}  // namespace cabwright::review
