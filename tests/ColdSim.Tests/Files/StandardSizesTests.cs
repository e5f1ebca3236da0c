using ColdSim.Files.Scenarios.Sections;
using ColdSim.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Files;

public class StandardSizesTests
{
    [Fact]
    public void Every_standard_size_has_all_its_numbers()
    {
        Assert.Equal(18, StandardSize.All.Count);
        Assert.Equal(18, StandardSize.All.Select(s => s.Name).Distinct().Count());
        // 488.1 lb of water, 146.9 US gallons and 154.8 L.
        Assert.Equal(0.932275, StandardSize.All.Sum(s => s.Volume_m3), 1e-6);
        Assert.Equal(309.9, StandardSize.All.Sum(s => s.ShellMass_kg), 1e-6);
        foreach (IEnumerable<StandardSize> series in StandardSize.All.GroupBy(s => (s.Orientation, s.IsMetric)))
        {
            double[] volumes = [.. series.Select(s => s.Volume_m3)];
            Assert.Equal(volumes.Order(), volumes);
        }
    }

    [Fact]
    public void Every_shell_is_a_cylinder_and_weighs_what_its_wall_says()
        => Assert.All(StandardSize.All, s =>
        {
            Assert.True(ShellGeometry.StraightLength_m(s.Volume_m3, s.OutsideDiameter_m - (2 * s.WallThickness_m)) > 0);
            Assert.Equal(ShellGeometry.SteelMass_kg(s.Volume_m3, s.OutsideDiameter_m, s.WallThickness_m), s.ShellMass_kg, 0.02 * s.ShellMass_kg);
            Assert.True(s.Tare_kg > s.ShellMass_kg);
        });

    [Fact]
    public void An_upright_size_is_called_by_its_legal_filling()
        => Assert.All(StandardSize.All.Where(s => s.Orientation == Orientation.Upright), s =>
        {
            double nominal = double.Parse(s.Name.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(nominal, s.LegalFill_kg / (s.IsMetric ? 1 : 0.45359237), 0.01 * nominal);
        });

    [Theory]
    [InlineData("20 lb", true)]
    [InlineData("20LB", true)]
    [InlineData("11 kg", true)]
    [InlineData("21 lb", false)]
    public void Sizes_are_found_by_name(string name, bool found) => Assert.Equal(found, StandardSize.Find(name) is not null);
}
