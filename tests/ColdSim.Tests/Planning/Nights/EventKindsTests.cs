using ColdSim.Planning.Nights;
using Xunit;

namespace ColdSim.Tests.Planning.Nights;

public class EventKindsTests
{
    [Fact]
    public void Every_kind_has_its_own_row_in_the_order_of_the_set()
        => Assert.Equal(Enum.GetValues<ReportedKind>(), EventKinds.All.Select(k => k.Kind));

    [Fact]
    public void Every_kind_of_event_has_its_own_letter()
        => Assert.Equal(EventKinds.All.Count, EventKinds.All.Select(k => k.Letter).Distinct().Count());
}
