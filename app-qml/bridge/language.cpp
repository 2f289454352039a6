// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/language.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <utility>

namespace plumbmark::bridge {

namespace {

constexpr QChar kFiller(0x00f8); // a letter as wide as most, at which no line breaks
constexpr QChar kReadFromRight(0x200f);
constexpr std::array<std::pair<char16_t, char16_t>, 10> kAccents{{{u'a', u'\u00e1'},
                                                                  {u'e', u'\u00e9'},
                                                                  {u'i', u'\u00ed'},
                                                                  {u'o', u'\u00f3'},
                                                                  {u'u', u'\u00fa'},
                                                                  {u'A', u'\u00c1'},
                                                                  {u'E', u'\u00c9'},
                                                                  {u'I', u'\u00cd'},
                                                                  {u'O', u'\u00d3'},
                                                                  {u'U', u'\u00da'}}};

struct Offered {
    const char* code;
    const char16_t* name;
};
constexpr std::array<Offered, 3> kOffered{{{"en", u"English"}, {"de", u"Deutsch"}, {"es", u"Espa\u00f1ol"}}};

/// Translates every text into itself, drawn out.
class StretchedWords : public QTranslator {
  public:
    explicit StretchedWords(bool rightToLeft) : rightToLeft_(rightToLeft) {}
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* /*context*/, const char* source, const char* /*hint*/,
                                    int /*n*/) const override {
        const QString text = stretched(QString::fromUtf8(source));
        return rightToLeft_ && !text.isEmpty() ? kReadFromRight + text : text;
    }

  private:
    bool rightToLeft_;
};

bool isOffered(const QString& code) {
    return std::any_of(kOffered.begin(), kOffered.end(),
                       [&](const Offered& o) { return code == QLatin1String(o.code); });
}

/// The first of the device's languages that there is.
QString deviceLanguage() {
    for (const QString& language : QLocale::system().uiLanguages()) {
        const QString code = language.section(QLatin1Char('-'), 0, 0).section(QLatin1Char('_'), 0, 0);
        if (isOffered(code)) {
            return code;
        }
    }
    return QStringLiteral("en");
}

} // namespace

QString stretched(const QString& english) {
    QString text;
    double owed = 0.0;
    for (qsizetype i = 0; i < english.size(); ++i) {
        const QChar c = english[i];
        if (c == QLatin1Char('%')) { // a placeholder: "%1", "%L2", "%n"
            text += c;
            while (i + 1 < english.size() && english[i + 1].isLetterOrNumber()) {
                text += english[++i];
                if (english[i] != QLatin1Char('L')) {
                    break;
                }
            }
            continue;
        }
        const auto accent = std::find_if(kAccents.begin(), kAccents.end(),
                                         [&](const auto& pair) { return c == QChar(pair.first); });
        text += accent == kAccents.end() ? c : QChar(accent->second);
        if (c.isLetter()) {
            owed += 0.4;
            const bool wordEnds = i + 1 == english.size() || !english[i + 1].isLetter();
            if (owed >= 1.0 || (wordEnds && owed >= 0.5)) {
                text += kFiller;
                owed -= 1.0;
            }
        }
    }
    return text;
}

QString unstretched(const QString& text) {
    QString english = text;
    english.remove(kFiller).remove(kReadFromRight);
    for (const auto& [plain, accented] : kAccents) {
        english.replace(QChar(accented), QChar(plain));
    }
    return english;
}

Language::Language(const QString& code) {
    const bool stretchedOut = code.startsWith(QLatin1String("stretched"));
    const QString used = stretchedOut ? QStringLiteral("en") : isOffered(code) ? code : deviceLanguage();
    if (stretchedOut) {
        rightToLeft_ = code.endsWith(QLatin1String("-rtl"));
        words_ = std::make_unique<StretchedWords>(rightToLeft_);
    } else { // English, too: its plurals
        words_ = std::make_unique<QTranslator>();
        if (!words_->load(QStringLiteral(":/translations/plumbmark_%1.qm").arg(used))) {
            words_.reset(); // this build has no translations
        }
    }
    if (words_) {
        QCoreApplication::installTranslator(words_.get());
    }
    // Numbers and days as the device's region writes them, unless its language is another one.
    if (!stretchedOut && isOffered(code) && used != before_.name().left(2)) {
        QLocale::setDefault(QLocale(used));
    }
}

Language::~Language() {
    if (words_) {
        QCoreApplication::removeTranslator(words_.get());
    }
    QLocale::setDefault(before_);
}

QVariantList Language::choices() {
    QVariantList list{
        QVariantMap{{QStringLiteral("value"), QString()},
                    {QStringLiteral("text"), QCoreApplication::translate("Language", "As the device")}}};
    for (const Offered& offered : kOffered) {
        list.append(QVariantMap{{QStringLiteral("value"), QLatin1String(offered.code)},
                                {QStringLiteral("text"), QString::fromUtf16(offered.name)}});
    }
    return list;
}

} // namespace plumbmark::bridge
