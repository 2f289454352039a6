// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>

namespace plumbmark::base {

/// Whose turn it is to act: the person who gave the input, or us.
enum class ErrorKind { input, failure };

/// What went wrong, in one plain sentence that says what is wrong and what to do.
/// `key` is stable and machine readable ("clip.truncated"), `sentence` is for people (English source text).
struct Error {
    ErrorKind kind = ErrorKind::failure;
    std::string key;
    std::string sentence;
};

[[nodiscard]] inline Error inputError(std::string key, std::string sentence) {
    return {ErrorKind::input, std::move(key), std::move(sentence)};
}
[[nodiscard]] inline Error failure(std::string key, std::string sentence) {
    return {ErrorKind::failure, std::move(key), std::move(sentence)};
}

/// A value or an Error. Errors are values: nothing in core/ throws across a module's border.
template <class T> class [[nodiscard]] Result {
  public:
    Result(T value) : state_(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : state_(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return state_.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] T& value() & { return std::get<0>(state_); }
    [[nodiscard]] const T& value() const& { return std::get<0>(state_); }
    [[nodiscard]] T&& value() && { return std::get<0>(std::move(state_)); }
    T& operator*() & { return value(); }
    const T& operator*() const& { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    T* operator->() { return &value(); }
    const T* operator->() const { return &value(); }
    [[nodiscard]] const Error& error() const { return std::get<1>(state_); }

  private:
    std::variant<T, Error> state_;
};

/// Success, or an Error.
template <> class [[nodiscard]] Result<void> {
  public:
    Result() = default;
    Result(Error error) : error_(std::move(error)) {}
    [[nodiscard]] bool ok() const { return !error_.has_value(); }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const Error& error() const { return *error_; }

  private:
    std::optional<Error> error_;
};

} // namespace plumbmark::base
