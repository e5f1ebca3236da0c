using ColdSim.Files.Logs;
using ColdSim.Files.Scenarios;
using ColdSim.Model;
using ColdSim.Planning;
using Xunit;

namespace ColdSim.Tests.Files.Logs;

public sealed class MeasurementReaderTests : IDisposable
{
    private static readonly Rig Two = ScenarioReader.Read(Path.Combine(DocPage.Scenarios, "changeover.toml")).Scenario!.Rig;

    private readonly string _log = Path.GetTempFileName();

    public void Dispose() => File.Delete(_log);

    private LogResult Read(params string[] lines)
    {
        File.WriteAllLines(_log, [LogLine.Header, .. lines]);
        return LogReader.Read(_log, Two);
    }

    [Fact]
    public void A_value_has_its_unit_its_own_error_and_its_cylinder()
    {
        string name = LogCylinders.NameOf(Two, 1);
        LogResult read = Read(
            $"2027-01-13T03:00-07:00,{name},pressure,200 kPa,,,", $"2027-01-13T03:00-07:00,{name},liquid,-20 °C,,error=0.5 K,strapped on",
            "2027-01-13T03:00-07:00,,inside,50 °F,,,", "2027-01-13T03:00-07:00,,voltage,12.31 V,,rested; error=10 mV,");
        Assert.Empty(read.Damaged);
        Assert.Empty(read.Readings);
        Assert.Equal([MeasuredQuantity.Pressure, MeasuredQuantity.Liquid, MeasuredQuantity.Inside, MeasuredQuantity.Voltage], read.Measurements.Select(m => m.Quantity));
        Assert.Equal([200e3, 253.15, 283.15, 12.31], read.Measurements.Select(m => Math.Round(m.Value, 6)));
        Assert.Equal([1, 1, (int?)null, null], read.Measurements.Select(m => m.Cylinder));
        Assert.Equal(0.5, read.Measurements[1].StandardError, 9);
        Assert.Equal(0.01, read.Measurements[3].StandardError, 9);
        Assert.Equal([false, false, false, true], read.Measurements.Select(m => m.Rested));
        Assert.Equal("strapped on", read.Measurements[1].Note);
        Assert.Equal([2, 3, 4, 5], read.Measurements.Select(m => m.Line));
    }

    [Theory]
    [InlineData(",preasure,28 psi,,,", "is not a way of reading", "pressure")]
    [InlineData(",pressure,28 psi,,,", "a cylinder called ''", null)]
    [InlineData("left,inside,50 °F,,,", "a cylinder called 'left'", null)]
    [InlineData(",inside,50,,,", "'50' has no unit", null)]
    [InlineData(",inside,500 °F,,,", "'500 °F'", null)]
    [InlineData(",inside,50 °F,10 °F,,", "'10 °F'", null)]
    [InlineData(",inside,50 °F,,filled,", "unknown detail 'filled' of inside", null)]
    [InlineData(",inside,50 °F,,eror=1 K,", "unknown detail 'eror' of inside", "error")]
    [InlineData(",voltage,12.3,,,", "'12.3' has no unit", null)]
    [InlineData(",voltage,120 V,,,", "'120 V'", null)]
    public void A_faulty_value_is_reported_with_what_is_accepted(string rest, string what, string? nearest)
    {
        LogResult read = Read("2027-01-13T03:00-07:00," + rest);
        Assert.Empty(read.Measurements);
        ColdSim.Files.FileProblem problem = Assert.Single(read.Damaged);
        Assert.Contains(what, problem.ToString(), StringComparison.Ordinal);
        Assert.Contains("accepted", problem.ToString(), StringComparison.Ordinal);
        if (nearest is not null)
            Assert.Contains($"did you mean '{nearest}'?", problem.ToString(), StringComparison.Ordinal);
    }
}
