// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/in_language.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <iterator>
#include <vector>

#include "translations/core_sentences.h"

namespace plumbmark::bridge {

namespace {

struct Pattern {
    const char* source;
    QRegularExpression form;
    qsizetype fixed = 0; ///< letters that are not filled in: the most particular pattern is asked first
};

const std::vector<Pattern>& patterns() {
    static const std::vector<Pattern> kPatterns = [] {
        static const QRegularExpression kPlace(QStringLiteral("%[1-9]"));
        std::vector<Pattern> list;
        for (const char* source : kCoreSentences) {
            const QString text = QString::fromUtf8(source);
            if (!text.contains(kPlace)) {
                continue;
            }
            QString form;
            qsizetype from = 0;
            auto places = kPlace.globalMatch(text);
            while (places.hasNext()) {
                const auto place = places.next();
                form += QRegularExpression::escape(text.mid(from, place.capturedStart() - from)) +
                        QStringLiteral("(.+?)");
                from = place.capturedEnd();
            }
            form += QRegularExpression::escape(text.mid(from));
            list.push_back({source, QRegularExpression(QRegularExpression::anchoredPattern(form)),
                            text.size() - 2 * text.count(QLatin1Char('%'))});
        }
        std::stable_sort(list.begin(), list.end(),
                         [](const Pattern& a, const Pattern& b) { return a.fixed > b.fixed; });
        return list;
    }();
    return kPatterns;
}

QString translated(const char* source) {
    return QCoreApplication::translate("Core", source);
}

} // namespace

QString inLanguage(const QString& english) {
    if (english.isEmpty()) {
        return english;
    }
    const QByteArray source = english.toUtf8();
    const bool listed = std::any_of(std::begin(kCoreSentences), std::end(kCoreSentences),
                                    [&](const char* sentence) { return source == sentence; });
    if (listed) {
        return translated(source.constData());
    }
    for (const Pattern& pattern : patterns()) {
        const auto match = pattern.form.match(english);
        if (match.hasMatch()) {
            QString text = translated(pattern.source);
            for (int place = 1; place <= match.lastCapturedIndex(); ++place) {
                text.replace(QStringLiteral("%%1").arg(place), inLanguage(match.captured(place)));
            }
            return text;
        }
    }
    // A list or several sentences: each for itself.
    static const QRegularExpression kEnd(QStringLiteral("\\n(?:- )?|(?<=[.?!]) (?=[A-Z\"])"));
    QString text;
    qsizetype from = 0;
    auto ends = kEnd.globalMatch(english);
    while (ends.hasNext()) {
        const auto end = ends.next();
        text += inLanguage(english.mid(from, end.capturedStart() - from)) + end.captured();
        from = end.capturedEnd();
    }
    return from == 0 ? english : text + inLanguage(english.mid(from));
}

} // namespace plumbmark::bridge
