// SPDX-License-Identifier: GPL-3.0-or-later
// CSV, the HTML report and xAPI statements of a session that was really run. The statements are
// held against the public validator by .ci/check-exports.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <sstream>

#include "review/csv.h"
#include "review/html_report.h"
#include "review/xapi.h"
#include "reviewed_session.h"
#include "session/digest.h"

namespace cabwright::review {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

class ExportTest : public testing::Test {
 protected:
  void SetUp() override { recordAndSeal(file_, kBadDeeds); }
  std::string html() { return makeHtmlReport(loadReport(file_)); }
  json xapi() {
    const session::Store store(file_);
    const Reviewed reviewed = reviewSession(store);
    return makeXapi(store, reviewed.sheet, reviewed.entries, {});
  }
  Folder folder_;
  std::filesystem::path file_ = folder_ / "a.cabsession";
};

TEST(CsvField, QuotesWhatMustBeAndDisarmsFormulas) {
  EXPECT_EQ(csvField("plain"), "plain");
  EXPECT_EQ(csvField("a,b"), "\"a,b\"");
  EXPECT_EQ(csvField("say \"x\""), "\"say \"\"x\"\"\"");
  EXPECT_EQ(csvField("a\nb"), "\"a\nb\"");
  for (const std::string formula : {"=1+1", "+cmd", "-x", "@sum", "\t=1"})
    EXPECT_EQ(csvField(formula)[csvField(formula)[0] == '"' ? 1 : 0], '\'') << formula;
  for (const std::string number : {"-1", "+2.5", "-1e3"}) EXPECT_EQ(csvField(number), number);
}

TEST_F(ExportTest, TheHeadOfThePageSaysWhichAttemptOnWhichPlant) {
  ReportInput report = loadReport(file_);
  EXPECT_THAT(makeHtmlReport(report), HasSubstr("<th scope=\"row\">Attempt</th><td>not counted"));
  EXPECT_THAT(
      makeHtmlReport(report),
      HasSubstr("<td>" + describePlant(session::Store(file_).header()) + ", calculated by"));
  report.attempt = AttemptPlace{2, 5};
  report.reviewed.sheet.head.remarks = {{120, "watch the gauge"}};
  report.reviewed.sheet.head.interventions = {{130, "took over"}};
  const std::string page = makeHtmlReport(report);
  for (const char* words : {"2 of 5 at this exercise", "watch the gauge", "took over"})
    EXPECT_THAT(page, HasSubstr(words));
}

// Every tag that opens closes in its order; every attribute is quoted.
std::string findHtmlFault(const std::string& html) {
  static const std::regex tag(R"re(<(/?)([a-z0-9]+)((?:\s+[a-zA-Z-]+="[^"<>]*")*)\s*(/?)>)re");
  static const std::set<std::string> empty{"meta", "br"};
  std::vector<std::string> open;
  std::string rest = std::regex_replace(html, std::regex("<!(DOCTYPE html|--[^>]*--)>"), "");
  for (std::sregex_iterator it(rest.begin(), rest.end(), tag), end; it != end; ++it) {
    const std::string name = (*it)[2];
    if ((*it)[1].length() > 0) {
      if (open.empty() || open.back() != name) return "closes " + name;
      open.pop_back();
    } else if ((*it)[4].length() == 0 && !empty.contains(name)) {
      open.push_back(name);
    }
  }
  rest = std::regex_replace(rest, tag, "");
  if (rest.find('<') != std::string::npos) return "a bare <";
  return open.empty() ? "" : "open: " + open.back();
}

// What the page says beside a name of its head.
std::string factOf(const std::string& page, const std::string& name) {
  const std::string begins = "<th scope=\"row\">" + name + "</th><td>";
  const std::size_t at = page.find(begins);
  if (at == std::string::npos) return "(nothing)";
  const std::size_t from = at + begins.size();
  return page.substr(from, page.find("</td>", from) - from);
}

TEST_F(ExportTest, ThePageSaysHowLongTheResultIsGoodByWhatTheSessionIs) {
  ReportInput report = loadReport(file_);
  const auto good = [&] { return factOf(makeHtmlReport(report), "Good until"); };
  EXPECT_THAT(good(), HasSubstr("not a pass that counts"));
  report.label.decision = "passed";
  report.label.started_utc = "2031-01-31T10:00:00Z";
  EXPECT_EQ(good(), "a pass of 2031-01-31; the operator says how long it is good");
  report.recency = RecencyRules{};
  EXPECT_THAT(good(), HasSubstr("no time is set at this station"));
  report.recency->by_exercise[report.label.scenario] = 1;
  EXPECT_EQ(good(), "2031-02-28 (1 month)");
  report.day_of = [](const ShelfItem&) { return readDay("2031-02-01"); };
  EXPECT_EQ(good(), "2031-03-01 (1 month)");
  report.label.started_utc.clear();
  report.day_of = {};
  EXPECT_THAT(good(), HasSubstr("does not say when it was begun"));
  session::spill(file_, session::slurp(file_) + "x");
  report = loadReport(file_);
  report.label.decision = "passed";
  EXPECT_EQ(good(), "the record was altered: it proves no pass");
}

TEST_F(ExportTest, TheHeadOfThePageHoldsWhatTheOtherPapersHold) {
  ReportInput report = loadReport(file_);
  report.program = "9.8.7";
  marking::MarkSheet& sheet = report.reviewed.sheet;
  sheet.head.trainee.clear();
  sheet.head.program_version = "1.2.3";
  sheet.head.time_allowed_s = 600;
  sheet.head.unaided_until = 1500;
  sheet.aim = marking::AimResult{"Air is up", std::nullopt};
  sheet.totals.percent = 79.9;
  const std::string page = makeHtmlReport(report);
  EXPECT_EQ(factOf(page, "Trainee"), "not recorded");
  EXPECT_THAT(factOf(page, "Plant"), testing::EndsWith("], calculated by version 1.2.3"));
  EXPECT_EQ(factOf(page, "Recorded by"), "version 1.2.3");
  EXPECT_EQ(factOf(page, "Report by"), "version 9.8.7");
  EXPECT_EQ(factOf(page, "Allowed"), "0:10:00.00");
  EXPECT_EQ(factOf(page, "Done when"), "Air is up: it did not come to that");
  EXPECT_THAT(factOf(page, "Unaided"), HasSubstr("up to 0:00:15.00"));
  EXPECT_THAT(factOf(page, "Points"), HasSubstr(" 79 %;"));
  EXPECT_EQ(factOf(page, "Model limits"), "none met");
  EXPECT_EQ(factOf(page, "File, SHA-256"),
            session::toHex(session::Sha256().add(session::slurp(file_)).finish()));
  EXPECT_THAT(page, HasSubstr("No assessor has decided yet"));
  sheet.head.limits_met = {{120, "too fast"}};
  EXPECT_THAT(makeHtmlReport(report), HasSubstr("too fast"));
  EXPECT_THAT(makeHtmlReport(report), Not(HasSubstr("<td>none met</td>")));
}

TEST_F(ExportTest, ALineOfThePageSaysItsTimeOnceAndMarginsOfNothingNot) {
  ReportInput report = loadReport(file_);
  marking::SheetLine& line = report.reviewed.sheet.lines.front();
  ASSERT_EQ(line.verdict.outcome, marking::Outcome::kBroken);
  line.verdict.reason = "Power at 0:00:02.00.";
  line.verdict.tick = 200;
  line.verdict.margin = -1;
  line.verdict.unit.clear();
  line.verdict.act = "set cab1.gear 1";
  line.verdict.corrected_after_s = 2.5;
  line.verdict.judged_as = marking::RuleClass::kSerious;
  line.possible = line.earned = 0;
  std::string page = makeHtmlReport(report);
  EXPECT_EQ(findHtmlFault(page), "");
  EXPECT_THAT(page, HasSubstr("<p>Power at 0:00:02.00.</p>"));
  EXPECT_THAT(page, HasSubstr("counted as serious"));
  EXPECT_THAT(page, HasSubstr("<b>Done</b> set cab1.gear 1"));
  EXPECT_THAT(page, HasSubstr("<b>Lasted</b> 2.5 s"));
  EXPECT_THAT(page, Not(HasSubstr("[0 of 0]")));
  EXPECT_THAT(page, Not(HasSubstr("Margin")));
  line.verdict.unit = "s";
  EXPECT_THAT(makeHtmlReport(report), HasSubstr("0:00:02.00. (missed by 1 s)"));
}

TEST_F(ExportTest, ActionsCsvHasALineForEachAction) {
  std::ostringstream out;
  const session::Store store(file_);
  writeActionsCsv(store, out);
  const auto lines = linesOf(out.str());
  EXPECT_EQ(lines.size(), store.readActions().size() + 1);
  EXPECT_EQ(lines[0], "tick,time_s,number,by,scheduled,verb,object,argument");
  EXPECT_THAT(lines, testing::Contains("200,2.00,3,trainee,0,set,cab1.gear,1"));
  EXPECT_THAT(out.str(), HasSubstr(",guard,1,ring,bell,2"));
}

TEST_F(ExportTest, SignalsCsvHasEverySignalAsItWasRecorded) {
  std::ostringstream out;
  const session::Store store(file_);
  writeSignalsCsv(store, out, 100);
  const auto lines = linesOf(out.str());
  EXPECT_EQ(lines.size(), 1 + 10U);  // seconds 0 to 9
  const auto commas = std::count(lines[0].begin(), lines[0].end(), ',');
  EXPECT_EQ(commas, static_cast<std::ptrdiff_t>(unit::kSignalCount) + 1);
  for (const auto& line : lines) EXPECT_EQ(std::count(line.begin(), line.end(), ','), commas);
  const auto frame = *store.findFrame(300);
  EXPECT_THAT(lines[4], testing::StartsWith("300,3.00," + fmt::format("{},", frame.value[0])));
}

TEST_F(ExportTest, TheReportIsWellFormedAndHoldsSheetEvidenceAndCaution) {
  const std::string report = html();
  EXPECT_EQ(findHtmlFault(report), "");
  EXPECT_THAT(report, testing::StartsWith("<!DOCTYPE html>\n"));
  for (const char* words :
       {"Mark sheet: Handbrake", "Leave the gear alone", "fails the run", "P. Example",
        "sealed on request and whole", "training aid only", "@media print", "Lift the pawl"})
    EXPECT_THAT(report, HasSubstr(words)) << words;
  for (const char* outside : {"http://", "https://", "<script", "src=", "@import", "url("})
    EXPECT_THAT(report, Not(HasSubstr(outside))) << outside;
}

TEST_F(ExportTest, TheReportSaysWhatWasAddedAndWhatWasAltered) {
  addEntries(file_, kAssessor,
             {Override{"gear", "", marking::Outcome::kMet, "a <b>good</b> & sound reason"},
              Decision{Result::kPassed, "so be it", "come again"}},
             session::sampleKey(), kUtc);
  std::string report = html();
  EXPECT_EQ(findHtmlFault(report), "");
  EXPECT_THAT(report, HasSubstr("a &lt;b&gt;good&lt;/b&gt; &amp; sound reason"));
  EXPECT_THAT(report, HasSubstr("recorded: broken"));
  EXPECT_THAT(report, HasSubstr("Decided by assessor R. Who"));
  session::spill(file_, session::slurp(file_) + "x");
  EXPECT_THAT(html(), HasSubstr("Record altered:</b> 1 byte was added"));
}

TEST_F(ExportTest, AReportOfTextsMadeToHurtIsWellFormedAllTheSame) {
  ReportInput input = loadReport(file_);
  const std::string evil = "\"><script>alert('x')</script><!-- & \x01\x1b]]>";
  marking::MarkSheet& sheet = input.reviewed.sheet;
  for (std::string* text : {&sheet.head.title, &sheet.head.trainee, &sheet.head.purpose,
                            &sheet.head.scenario, &sheet.decision.text})
    *text = evil;
  for (marking::SheetLine& line : sheet.lines) {
    line.title = line.why = line.advice = line.tolerance = line.phase = evil;
    line.verdict.reason = line.verdict.way = line.verdict.unit = evil;
    line.verdict.details = {evil};
    line.override_record = marking::Override{evil, evil, evil, std::nullopt};
  }
  sheet.head.faults = sheet.head.prompts = {{100, evil}};
  input.verification.standing = session::Standing::kAltered;
  input.verification.findings = {evil};
  const std::string report = makeHtmlReport(input);
  EXPECT_EQ(findHtmlFault(report), "");
  EXPECT_THAT(report, Not(HasSubstr("<script")));
}

TEST_F(ExportTest, AStripShowsWhatWasShownAndWhatWasTrue) {
  const auto air = *unit::findSignal("cab1.air");
  const auto truth = marking::findCounterpart(air);
  ASSERT_TRUE(truth);
  session::SignalHistory history(std::vector<unit::Signal>{air, *truth});
  session::Store(file_).show(history);
  const std::string strip = drawStrip(history, {air, 0, truth, 0}, 400);
  EXPECT_EQ(findHtmlFault(strip), "");
  EXPECT_THAT(strip, HasSubstr("class=\"shown\""));
  EXPECT_THAT(strip, HasSubstr("class=\"true\""));
  EXPECT_EQ(drawStrip(history, {air, 0, truth, 0}, 1'000'000), "");
}

TEST_F(ExportTest, StatementsBeginJudgeAndEndTheSession) {
  const json all = xapi();
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0]["verb"]["display"]["en"], "initialized");
  EXPECT_EQ(all[1]["verb"]["id"], "http://adlnet.gov/expapi/verbs/failed");
  EXPECT_EQ(all[1]["result"]["success"], false);
  EXPECT_EQ(all[1]["result"]["duration"], "PT9.15S");
  EXPECT_FALSE(all[1]["result"].contains("completion"));
  EXPECT_EQ(all[2]["verb"]["display"]["en"], "terminated");
  EXPECT_EQ(all[0]["actor"]["account"]["name"], "P. Example");
  EXPECT_THAT(all.dump(), Not(HasSubstr("null")));
  EXPECT_EQ(all, xapi());  // ids and all
  EXPECT_NE(all[0]["id"], all[1]["id"]);
}

TEST_F(ExportTest, StatementsFollowTheAssessorAndTheClock) {
  addEntries(file_, kAssessor, {Decision{Result::kPassed, "so be it", ""}}, session::sampleKey(),
             kUtc);
  const json all = xapi();
  EXPECT_EQ(all[1]["verb"]["display"]["en"], "passed");
  const std::string from = all[0]["timestamp"], to = all[2]["timestamp"];
  EXPECT_TRUE(std::regex_match(to, std::regex(R"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.150Z)")));
  EXPECT_LT(from, to);
}

TEST_F(ExportTest, AHomeThatIsNoAddressIsRefused) {
  EXPECT_FALSE(findXapiFault({"https://example.org/p"}));
  for (const std::string bad : {"", "example.org", "://x", "http://", "http://a b", "http://<"})
    EXPECT_TRUE(findXapiFault({bad})) << bad;
}

}  // namespace
}  // namespace cabwright::review
