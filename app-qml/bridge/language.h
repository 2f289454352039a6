// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>
#include <QVariantList>
#include <memory>

namespace plumbmark::bridge {

/// The language in use (words, number format, reading direction) for as long as this lives; one at a time.
class Language {
  public:
    /// `code`: "" as the device's, "en", "de", "es"; and for those who look after the app "stretched"
    /// (English, 40 % longer, accented) and "stretched-rtl" (the same, read from right to left). Unknown
    /// codes count as
    /// "". What has no translation is shown in English.
    explicit Language(const QString& code);
    ~Language();
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;

    [[nodiscard]] bool rightToLeft() const { return rightToLeft_; }
    /// What a person may choose: [{value, text}], each language by its own name.
    [[nodiscard]] static QVariantList choices();

  private:
    std::unique_ptr<QTranslator> words_;
    bool rightToLeft_ = false;
    QLocale before_;
};

/// English drawn out by 40 % of its letters, vowels with accents: shows where a longer language would not
/// fit, and what never went through translation. Placeholders (%1) stay whole.
[[nodiscard]] QString stretched(const QString& english);
/// The English it was made of.
[[nodiscard]] QString unstretched(const QString& text);

} // namespace plumbmark::bridge
