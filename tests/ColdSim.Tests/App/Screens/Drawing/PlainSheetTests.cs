using ColdSim.App.Screens.Drawing;
using Xunit;

namespace ColdSim.Tests.App.Screens.Drawing;

public class PlainSheetTests
{
    private static string Of(string text)
    {
        Sheet sheet = new(text.Length, 1);
        sheet.Put(0, 0, text);
        return PlainSheet.Of(sheet).Row(0);
    }

    [Theory]
    [InlineData("│ ┤ ┊ ─ ╵", "| + | - ^")]
    [InlineData("↑↓ ←→ more…", "^v <> more~")]
    [InlineData("80 °F, 3 ft²", "80  F, 3 ft2")]
    [InlineData("80 °F inside", "80 F  inside")]
    [InlineData("at 80 °C", "at 80 C ")]
    [InlineData("Café – 雪", "Cafe - ?")]
    public void A_glyph_becomes_what_means_the_same(string text, string plain) => Assert.Equal(plain, Of(text));

    [Fact]
    public void Every_glyph_has_a_character_of_ascii()
    {
        for (int c = 0; c <= char.MaxValue; c++)
            Assert.InRange(PlainSheet.Of((char)c), '\0', '\x7f');
    }

    [Fact]
    public void A_curve_keeps_its_own_mark_and_its_style()
    {
        Sheet sheet = new(1, 1);
        sheet.Put(0, 0, '⠒', CellStyle.Supply, '-');
        Assert.Equal(('-', CellStyle.Supply), (PlainSheet.Of(sheet)[0, 0].Glyph, PlainSheet.Of(sheet)[0, 0].Style));
    }
}
