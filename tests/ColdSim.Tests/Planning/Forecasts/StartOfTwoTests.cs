using ColdSim.Planning;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Logs;
using ColdSim.Tests.Planning.Fits;
using Xunit;

namespace ColdSim.Tests.Planning.Forecasts;

/// <summary>Where a run starts whose log is of two cylinders, of which one was not read lately.</summary>
public class StartOfTwoTests
{
    // The left one is read at the start only, the right one to the end.
    private static (TwoCylinderLog Log, ForecastStart Start) LeftNotRead()
    {
        TwoCylinderLog log = TwoCylinderLog.Of(57, TwoCylinders.ByHand, 3);
        LogReading[] readings = [.. log.Readings.Where(r => r.Cylinder == 1 || r.Time == InventedCoach.Start)];
        UseLog use = UseLog.Of(readings, log.Scenario.Rig);
        return (log, ForecastStart.Of(log.Scenario, use)!);
    }

    [Fact]
    public void Cylinder_that_fed_unread_is_worked_out_and_not_taken_as_last_read()
    {
        (TwoCylinderLog log, ForecastStart start) = LeftNotRead();
        StartedCylinder left = Assert.Single(start.Scenario.StartedFrom!.Cylinders, c => c.Name == "left");
        Assert.Equal(StartedBy.WorkedOut, left.By);
        Assert.False(log.FilledUnread[0]);
        Assert.InRange(left.Left_kg, log.AtEnd_kg[0] - 3 * left.Uncertainty_kg, log.AtEnd_kg[0] + 3 * left.Uncertainty_kg);
        Assert.True(log.Readings.First(r => r.Cylinder == 0).Contents(log.Scenario.Rig).Mass.Kilograms - left.Left_kg > 2);
    }

    [Fact]
    public void Cylinder_in_use_is_put_first_and_keeps_its_name_and_place_in_the_file()
    {
        TwoCylinderLog log = TwoCylinderLog.Of(57, TwoCylinders.ByHand, 3);
        Scenario turned = StartContents.InUseFirst(log.Scenario, 1);
        Assert.Equal(["right", "left"], turned.Rig.CylinderNames());
        Assert.Equal([1, 0], turned.FilePlaces);
        (_, ForecastStart start) = LeftNotRead();
        Assert.Equal(log.InUseAtEnd == 0 ? "left" : "right", start.Scenario.StartedFrom!.InUse);
        Assert.Equal(start.Scenario.StartedFrom.InUse, start.Scenario.Rig.NameOf(0));
        Assert.Equal(start.AtStart_kg, start.Scenario.Rig.Cylinders.Select(c => c.Contents_kg));
    }
}
