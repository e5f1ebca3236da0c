using ColdSim.Files.Weather;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

public class InstantTextTests
{
    private static readonly string[] Plain =
    [
        "2025-01-14T17:00", "2025-01-14 17:00:59", "2024-02-29T23:59Z", "2025-01-14T17:00:00-07:00", "2025-01-14 00:00+05:30", "8999-12-31T23:59:59+14:00",
        "0002-01-01T00:00-14:00", "2025-01-14T24:00Z",
    ];

    [Theory]
    [InlineData("2025-01-14T17:00-07:00", "2025-01-14T17:00:00-07:00")]
    [InlineData("2025-01-14 17:00:59Z", "2025-01-14T17:00:59+00:00")]
    [InlineData("2025-01-14T17:00", "2025-01-14T17:00:00+01:00")]
    [InlineData("2025-01-14T24:00Z", "2025-01-15T00:00:00+00:00")]
    public void A_time_is_read(string text, string expected)
    {
        Assert.Equal(InstantText.Outcome.Read, InstantText.TryRead(text, TimeSpan.FromHours(1), out DateTimeOffset instant));
        Assert.Equal(DateTimeOffset.ParseExact(expected, "yyyy-MM-dd'T'HH:mm:sszzz", null), instant);
        Assert.Equal(DateTimeOffset.ParseExact(expected, "yyyy-MM-dd'T'HH:mm:sszzz", null).Offset, instant.Offset);
    }

    [Theory]
    [InlineData("2025-02-29T17:00Z")]
    [InlineData("2025-13-01T17:00Z")]
    [InlineData("2025-01-14T17:60Z")]
    [InlineData("2025-01-14T25:00Z")]
    [InlineData("2025-01-14T17:00:60Z")]
    [InlineData("2025-01-14T17:00+14:01")]
    [InlineData("2025-01-14T17:00+05:60")]
    [InlineData("2o25-01-14T17:00Z")]
    [InlineData("0001-01-01T00:00Z")]
    public void What_is_no_time_is_not_read(string text) => Assert.Equal(InstantText.Outcome.Unreadable, InstantText.TryRead(text, null, out _));

    [Fact]
    public void Without_any_offset_it_says_so() => Assert.Equal(InstantText.Outcome.WithoutOffset, InstantText.TryRead("2025-01-14T17:00", null, out _));

    [Fact]
    public void The_short_way_reads_what_the_long_way_reads_whatever_is_mistyped()
        => Gen.Select(Gen.Int[0, Plain.Length - 1], Gen.Select(Gen.Int[0, 24], Gen.Char["0123456789:-+TZ \u0663\u2212"]).Array[0, 3], Gen.Bool).Sample((which, typed, stated) =>
        {
            char[] text = Plain[which].ToCharArray();
            foreach ((int at, char c) in typed)
                text[at % text.Length] = c;
            TimeSpan? offset = stated ? TimeSpan.FromHours(-7) : null;
            InstantText.Outcome quick = InstantText.TryRead(new(text), offset, out DateTimeOffset a), whole = InstantText.TryAny(new(text), offset, out DateTimeOffset b);
            Assert.Equal((whole, b, b.Offset), (quick, a, a.Offset));
        }, iter: 20_000);
}
