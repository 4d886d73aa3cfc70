// SPDX-License-Identifier: GPL-3.0-or-later
// The page of the mark sheet over a small session that was really run and sealed: line "gear", a
// critical one, is broken at tick 200, line "pawl" is met at tick 253.
#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>
#include <memory>
#include <string>

#include "review_room/marks_page.h"
#include "reviewed_session.h"

namespace cabwright::review_room {

using session::Folder;

/// The same as session::record with the bad deeds, in assessment.
inline void recordAssessment(const std::filesystem::path& file,
                             const std::vector<session::Person>& people) {
  session::Situation situation = session::sampleSituation();
  session::SessionHeader header = session::makeHeader(situation, 7, "0.1.0");
  header.people = people;
  session::chooseMode(situation, header, scenario::Mode::kAssessment);
  const scenario::Setup setup = scenario::makeSetup(situation.loaded, 7);
  session::RecorderOptions options;  // an assessment is sealed when it ends
  options.key_folder = file.parent_path() / "station";
  session::Recorder recorder(file, header, options);
  session::MarkingWitness marking(session::makeTerms(situation, setup));
  session::Run run(setup);
  run.addWitness(marking);
  run.addWitness(recorder);
  run.begin();
  session::perform(run, review::kBadDeeds, 915);
  marking.finish(run.tick());
  marking::SheetHead head = session::makeHead(situation, header);
  head.last_tick = run.tick();
  recorder.close(session::makeClosing(run.tick(), "finished", marking.makeSheet(head)));
}

class MarksRig : public testing::Test {
 protected:
  /// In practice, so that the marks are seen at once.
  void openPractice() {
    review::recordAndSeal(file_, review::kBadDeeds);
    open();
  }
  void openAssessment(const std::vector<session::Person>& people = {review::kTrainee}) {
    recordAssessment(file_, people);
    open();
  }
  void open() {
    page_.reset();
    opened_ = std::make_unique<Opened>(file_);
    page_ = std::make_unique<MarksPage>(*opened_);
    page_->setKeyFolder(folder_ / "keys");
    QObject::connect(page_.get(), &MarksPage::jumpAsked, opened_.get(), &Opened::setCursor);
    QObject::connect(opened_.get(), &Opened::cursorMoved, page_.get(), &MarksPage::showMoment);
    page_->resize(460, 924);
    page_->show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
  }
  void signOn(const session::Person& by = review::kAssessor, std::uint8_t key = 2) {
    opened_->setSigner(by, session::sampleKey(key));
  }

  template <class Kind>
  Kind* find(const char* name) {
    auto* found = page_->findChild<Kind*>(QLatin1String(name));
    if (found == nullptr) ADD_FAILURE() << "nothing is called " << name;
    return found;
  }
  /// As a hand does: what is not seen or not enabled cannot be pressed.
  void press(const char* name) {
    auto* button = find<QAbstractButton>(name);
    ASSERT_NE(button, nullptr);
    ASSERT_TRUE(button->isVisible()) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  void type(const char* name, const QString& words) {
    auto* field = find<QWidget>(name);
    ASSERT_NE(field, nullptr);
    ASSERT_TRUE(field->isVisible()) << name;
    field->setFocus();
    QTest::keyClicks(field, words);
  }
  QString said(const char* form_button) {
    auto* label = page_->findChild<QLabel*>(QLatin1String(form_button) + QLatin1String("_said"));
    return label != nullptr && label->isVisible() ? label->text() : QString();
  }
  void clickRow(MarksList& list, const char* rule) {
    for (int k = 0; k < list.model()->rowCount(); ++k) {
      if (list.rows()[static_cast<std::size_t>(k)].rule != rule) continue;
      list.scrollTo(list.model()->index(k, 0));
      QTest::mouseClick(list.viewport(), Qt::LeftButton, {},
                        list.visualRect(list.model()->index(k, 0)).center());
      return;
    }
    ADD_FAILURE() << "no row " << rule;
  }
  template <class Kind>
  std::vector<Kind> added() const {
    std::vector<Kind> found;
    for (const review::Entry& entry : opened_->entries())
      if (const auto* content = std::get_if<Kind>(&entry.content)) found.push_back(*content);
    return found;
  }
  /// All words that can be seen on the page now, of labels, texts, buttons and lists.
  QString visibleWords() const {
    QStringList words;
    for (const QWidget* widget : page_->findChildren<QWidget*>()) {
      if (!widget->isVisible()) continue;
      if (const auto* label = qobject_cast<const QLabel*>(widget)) words << label->text();
      if (const auto* button = qobject_cast<const QAbstractButton*>(widget))
        words << button->text();
      if (const auto* text = qobject_cast<const QTextEdit*>(widget)) words << text->toPlainText();
      if (const auto* list = qobject_cast<const MarksList*>(widget))
        for (int k = 0; k < list->model()->rowCount(); ++k)
          words << list->model()->index(k, 0).data(Qt::AccessibleTextRole).toString();
    }
    return words.join(QLatin1Char('\n'));
  }

  Folder folder_;
  std::filesystem::path file_ = folder_ / "a.cabsession";
  std::unique_ptr<Opened> opened_;
  std::unique_ptr<MarksPage> page_;
};

}  // namespace cabwright::review_room
