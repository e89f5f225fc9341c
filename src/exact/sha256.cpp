#include "exact/sha256.h"

#include <bit>

namespace berthwright {
namespace {

__extension__ using Wide128 = unsigned __int128;

// The greatest whole number whose power is at most `value`.
constexpr Wide128 root_of(Wide128 value, int power) {
  Wide128 root = 0;
  for (int bit = power == 2 ? 63 : 41; bit >= 0; --bit) {
    const Wide128 tried = root | Wide128{1} << bit;
    const Wide128 made = power == 2 ? tried * tried : tried * tried * tried;
    if (made <= value) root = tried;
  }
  return root;
}

// The first 32 bits behind the point of the roots of the first primes: the standard's constants.
template <std::size_t count>
constexpr std::array<std::uint32_t, count> roots_of_primes(int power) {
  std::array<std::uint32_t, count> words{};
  std::size_t found = 0;
  for (std::uint32_t n = 2; found < count; ++n) {
    bool prime = true;
    for (std::uint32_t d = 2; d * d <= n; ++d) prime = prime && n % d != 0;
    if (prime) words[found++] = static_cast<std::uint32_t>(root_of(Wide128{n} << (power == 2 ? 64 : 96), power));
  }
  return words;
}
constexpr std::array<std::uint32_t, 8> first_state = roots_of_primes<8>(2);
constexpr std::array<std::uint32_t, 64> round_words = roots_of_primes<64>(3);

using Block = std::array<std::uint32_t, 64>;

void mix(std::array<std::uint32_t, 8>& state, Block& w) {
  for (std::size_t i = 16; i < w.size(); ++i) {
    const std::uint32_t s0 = std::rotr(w[i - 15], 7) ^ std::rotr(w[i - 15], 18) ^ w[i - 15] >> 3U;
    const std::uint32_t s1 = std::rotr(w[i - 2], 17) ^ std::rotr(w[i - 2], 19) ^ w[i - 2] >> 10U;
    w[i] = w[i - 16] + s0 + w[i - 7] + s1;
  }
  auto [a, b, c, d, e, f, g, h] = state;
  for (std::size_t i = 0; i < w.size(); ++i) {
    const std::uint32_t s1 = std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25);
    const std::uint32_t one = h + s1 + ((e & f) ^ (~e & g)) + round_words[i] + w[i];
    const std::uint32_t s0 = std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22);
    const std::uint32_t two = s0 + ((a & b) ^ (a & c) ^ (b & c));
    h = g;
    g = f;
    f = e;
    e = d + one;
    d = c;
    c = b;
    b = a;
    a = one + two;
  }
  const std::array<std::uint32_t, 8> mixed{a, b, c, d, e, f, g, h};
  for (std::size_t i = 0; i < mixed.size(); ++i) state[i] += mixed[i];
}

}  // namespace

std::array<std::uint32_t, 8> sha256(std::string_view bytes) {
  std::string padded(bytes);
  padded += '\x80';
  while (padded.size() % 64 != 56) padded += '\0';
  const std::uint64_t bits = std::uint64_t{bytes.size()} * 8;
  for (int shift = 56; shift >= 0; shift -= 8) padded += static_cast<char>(bits >> shift & 0xffU);
  std::array<std::uint32_t, 8> state = first_state;
  for (std::size_t from = 0; from < padded.size(); from += 64) {
    Block w{};
    for (std::size_t i = 0; i < 64; ++i)
      w[i / 4] = w[i / 4] << 8U | static_cast<unsigned char>(padded[from + i]);
    mix(state, w);
  }
  return state;
}

std::string sha256_source(std::string_view bytes) {
  constexpr std::string_view signs = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string raw;
  for (const std::uint32_t word : sha256(bytes))
    for (int shift = 24; shift >= 0; shift -= 8) raw += static_cast<char>(word >> shift & 0xffU);
  std::string text = "sha256-";
  for (std::size_t i = 0; i < raw.size(); i += 3) {
    std::uint32_t three = 0;
    for (std::size_t j = i; j < i + 3; ++j)
      three = three << 8U | (j < raw.size() ? static_cast<unsigned char>(raw[j]) : 0U);
    for (std::size_t k = 0; k < 4; ++k) text += i + k > raw.size() ? '=' : signs[three >> (18 - 6 * k) & 63U];
  }
  return text;
}

}  // namespace berthwright
