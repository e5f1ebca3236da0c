using ColdSim.App.Text;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.App.Text;

public class RoughSpanTests
{
    [Theory]
    [InlineData(5, "5 min")]
    [InlineData(28, "28 min")]
    [InlineData(43, "45 min")]
    [InlineData(152, "2 h 30 min")]
    [InlineData(19 * 60 + 17, "19 h")]
    [InlineData(74 * 60, "3 days")]
    public void A_span_is_said_as_finely_as_it_is_known(double minutes, string text) => Assert.Equal(text, RoughSpan.Of(Duration.FromMinutes(minutes)));
}
