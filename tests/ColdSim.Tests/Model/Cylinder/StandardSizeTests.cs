using ColdSim.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

public class StandardSizeTests
{
    private const double Steel_kg_m3 = 7850;

    public static TheoryData<string> Names { get; } = new(StandardSize.All.Select(s => s.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_shell_weighs_what_its_area_and_wall_of_steel_do(string name)
    {
        StandardSize size = StandardSize.Find(name)!;
        double outside_m2 = new CylinderBody(size.Full()).Vessel.OutsideArea_m2;
        Assert.Equal(1, size.ShellMass_kg / (outside_m2 * size.WallThickness_m * Steel_kg_m3), 0.05);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Collar_foot_ring_and_valve_weigh_one_to_seven_kilograms(string name)
    {
        StandardSize size = StandardSize.Find(name)!;
        Assert.InRange(size.Tare_kg - size.ShellMass_kg, 0.3, 7);
        if (size.Orientation == Orientation.Horizontal) Assert.Equal(3, size.Tare_kg - size.ShellMass_kg, 1e-9);
    }

    // Its name is the charge: of the pound sizes rounded, of the kilogram sizes to a tenth.
    [Theory]
    [MemberData(nameof(Names))]
    public void An_upright_may_be_filled_with_the_charge_in_its_name(string name)
    {
        StandardSize size = StandardSize.Find(name)!;
        double number = double.Parse(name.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        if (name.EndsWith(" gal", StringComparison.Ordinal)) Assert.Equal(number * 3.785411784e-3, size.Volume_m3, 1e-6);
        else Assert.Equal(number * (size.IsMetric ? 1 : 0.45359237), size.LegalFill_kg, 0.01 * size.LegalFill_kg);
    }

    [Fact]
    public void A_twenty_pound_cylinder_is_that_of_the_trade()
    {
        StandardSize size = StandardSize.Find("20 lb")!;
        Assert.Equal(0.02159, size.Volume_m3, 1e-5);
        Assert.Equal(0.30988, size.OutsideDiameter_m, 1e-5);
        Assert.Equal(0.0021, size.WallThickness_m, 1e-12);
        Assert.Equal(7.938, size.Tare_kg, 1e-3);
        Assert.Equal(9.07, size.LegalFill_kg, 0.01);
    }

    [Fact]
    public void A_full_one_is_legally_full_and_of_its_own_metal_and_tare()
    {
        StandardSize size = StandardSize.Find("11 kg")!;
        CylinderSpecification full = size.Full();
        Assert.Equal((size.LegalFill_kg, size.LegalFill_kg), (full.Contents_kg, full.LegalFill_kg));
        Assert.Equal((size.ShellMass_kg, size.Tare_kg), (full.MetalMass_kg, full.Tare_kg));
        Assert.Equal(0.0262, full.Volume_m3, 1e-12);
        Assert.Equal(0.3, full.OutsideDiameter_m, 1e-12);
        Assert.Equal(0.0022, full.WallThickness_m, 1e-12);
    }

    [Fact]
    public void A_size_is_found_with_or_without_spaces_and_capitals()
    {
        Assert.Equal("20 lb", StandardSize.Find("20LB")?.Name);
        Assert.Equal("5.9 gal", StandardSize.Find(" 5.9 Gal")?.Name);
        Assert.Null(StandardSize.Find("21 lb"));
    }

    [Fact]
    public void Uprights_of_a_series_are_of_one_unit_and_grow()
    {
        Assert.Equal(["5 lb", "10 lb", "20 lb", "30 lb", "40 lb", "100 lb"], StandardSize.Uprights(metric: false).Select(s => s.Name));
        Assert.Equal(["5 kg", "6 kg", "10 kg", "11 kg", "33 kg"], StandardSize.Uprights(metric: true).Select(s => s.Name));
        Assert.All([false, true], metric => Assert.Equal(StandardSize.Uprights(metric).OrderBy(s => s.Volume_m3), StandardSize.Uprights(metric)));
    }
}
