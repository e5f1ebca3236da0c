using ColdSim.App.Screens.Drawing;
using ColdSim.App.Screens.Frame;
using Xunit;

namespace ColdSim.Tests.App.Screens.Drawing;

public class QuantityColorsTests
{
    [Fact]
    public void No_two_quantities_share_a_colour_and_there_are_at_most_sixteen()
    {
        Assert.InRange(QuantityColors.All.Count, 1, 16);
        Assert.Equal(QuantityColors.All.Count, QuantityColors.All.Select(q => q.Color).Distinct().Count());
    }

    [Fact]
    public void Every_style_but_the_four_without_a_quantity_has_a_colour()
        => Assert.Equal(
            [CellStyle.Plain, CellStyle.Strong, CellStyle.Pointer, CellStyle.StrongPointer], Enum.GetValues<CellStyle>().Where(s => QuantityColors.Of(s) is null));

    [Fact]
    public void Colours_differ_on_the_terminal_and_without_colour_only_bold_and_reverse_are_left()
    {
        CellStyle[] quantities = [.. QuantityColors.All.Select(q => q.Style)];
        TerminalStyles colored = new(color: true), plain = new(color: false);
        Assert.Equal(quantities.Length, quantities.Select(colored.Of).Distinct().Count());
        Assert.All(quantities, q => Assert.Equal(plain.Of(CellStyle.Plain), plain.Of(q)));
        Assert.Equal(4, ((CellStyle[])[CellStyle.Plain, CellStyle.Strong, CellStyle.Pointer, CellStyle.StrongPointer]).Select(plain.Of).Distinct().Count());
    }
}
