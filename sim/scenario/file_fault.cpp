// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/file_fault.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <map>
#include <tuple>

#include "quantity/utf8.h"

namespace cabwright::scenario {

namespace {

FileFault wholeFile(const std::string& path, std::string what) {
  return {{path, 0, 0}, std::move(what)};
}

std::string hexByte(char c) {
  constexpr char kDigits[] = "0123456789ABCDEF";
  const auto byte = static_cast<unsigned char>(c);
  return {kDigits[byte >> 4], kDigits[byte & 15]};
}

}  // namespace

std::string toText(const FileFault& fault) {
  if (fault.at.line == 0) return fault.at.file + ": " + fault.what;
  return fault.at.file + ":" + std::to_string(fault.at.line) + ":" +
         std::to_string(fault.at.column) + ": " + fault.what;
}

void sortFaults(FileFaults& faults) {
  std::map<std::string, std::size_t> order;
  for (const FileFault& f : faults) order.try_emplace(f.at.file, order.size());
  const auto key = [&](const FileFault& f) {
    return std::make_tuple(order.at(f.at.file), f.at.line, f.at.column);
  };
  std::stable_sort(faults.begin(), faults.end(),
                   [&](const FileFault& a, const FileFault& b) { return key(a) < key(b); });
  faults.erase(std::unique(faults.begin(), faults.end()), faults.end());
}

std::variant<SourceFile, FileFault> loadText(const std::string& path) {
  namespace fs = std::filesystem;
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (status.type() == fs::file_type::not_found) return wholeFile(path, "there is no such file");
  if (error) return wholeFile(path, "cannot be looked at: " + error.message());
  if (status.type() == fs::file_type::directory) {
    return wholeFile(path, "is a folder, a file is wanted");
  }
  std::ifstream in(path, std::ios::binary);
  if (!in) return wholeFile(path, std::string("cannot be opened: ") + std::strerror(errno));
  SourceFile file{path, {}};
  // One byte more than allowed tells a file that is too large, whatever its size claims to be.
  file.text.resize(kLargestFile + 1);
  in.read(file.text.data(), static_cast<std::streamsize>(file.text.size()));
  if (in.bad()) return wholeFile(path, "cannot be read to its end");
  file.text.resize(static_cast<std::size_t>(in.gcount()));
  if (file.text.starts_with("\xEF\xBB\xBF")) file.text.erase(0, 3);
  if (const auto faults = findTextFaults(file); !faults.empty()) return faults.front();
  return file;
}

std::vector<FileFault> findTextFaults(const SourceFile& file) {
  if (file.text.size() > kLargestFile) {
    return {wholeFile(file.name, "is larger than the 4 MiB allowed")};
  }
  std::size_t line = 1, column = 1;
  const std::string_view text = file.text;
  for (std::size_t k = 0; k < text.size();) {
    const std::size_t length = quantity::calcCharacterLength(text.substr(k));
    if (length == 0 || text[k] == '\0') {
      const std::string what = length == 0 ? "byte " + hexByte(text[k]) + " is no UTF-8 text"
                                           : "a NUL byte: this is no text file";
      return {{{file.name, line, column}, what}};
    }
    if (text[k] == '\r' && text.substr(k + 1, 1) != "\n") {
      return {{{file.name, line, column},
               "a carriage return in a line; allowed: lines that end with LF or CR LF"}};
    }
    ++column;
    if (text[k] == '\n') {
      ++line;
      column = 1;
    }
    k += length;
  }
  return {};
}

}  // namespace cabwright::scenario
