#include "exact/sha256.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

using Words = std::array<std::uint32_t, 8>;

// FIPS 180-4's own examples, read in NIST's "SHA256.pdf" (examples with intermediate values): from memory.
TEST(Sha256, GivesTheDigestsOfTheStandardsExamples) {
  EXPECT_EQ(sha256("abc"), (Words{0xba7816bf, 0x8f01cfea, 0x414140de, 0x5dae2223, 0xb00361a3, 0x96177a9c,
                                  0xb410ff61, 0xf20015ad}));
  EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            (Words{0x248d6a61, 0xd20638b8, 0xe5c02693, 0x0c3e6039, 0xa33ce459, 0x64ff2167, 0xf6ecedd4,
                   0x19db06c1}));
}

// Lengths at which the padding takes one block more, by `sha256sum` of GNU coreutils.
TEST(Sha256, PadsToWholeBlocks) {
  EXPECT_EQ(sha256(std::string(55, 'a')).front(), 0x9f4390f8U);
  EXPECT_EQ(sha256(std::string(56, 'a')).front(), 0xb35439a4U);
  EXPECT_EQ(sha256(std::string(64, 'a')).front(), 0xffe054feU);
  EXPECT_EQ(sha256(std::string(1'000'000, 'a')).front(), 0xcdc76e5cU);
}

// By `printf '' | openssl dgst -sha256 -binary | base64`.
TEST(Sha256, IsWrittenAsAPolicyNamesIt) {
  EXPECT_EQ(sha256_source(""), "sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=");
}

}  // namespace
}  // namespace berthwright
