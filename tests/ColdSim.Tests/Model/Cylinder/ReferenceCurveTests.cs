using ColdSim.Model.Cylinder;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>Draws against curves that two programs independent of this one computed from the same equation of state.</summary>
/// <remarks>
/// Liquid, vapour and steel at one temperature, steel at 460 J/(kg K), start 0 °C. They test the energy balance, not the heat that
/// comes from outside; and they are calculations, not measurements, so they do not count as values from outside.
/// </remarks>
public class ReferenceCurveTests
{
    private static CylinderBody Vessel(double litres, double steel_kg) => new(new CylinderSpecification
    {
        Name = "reference",
        Volume_m3 = litres / 1000,
        OutsideDiameter_m = 0.31,
        MetalMass_kg = steel_kg,
        Tare_kg = steel_kg,
        LegalFill_kg = 0.42 * litres,
        Contents_kg = 0.42 * litres,
    });

    private static void Check(CylinderBody body, double start_kg, double drawn_kg, double t_C, double? p_kPa)
    {
        Drawn end = ForcedDraw.After(body, start_kg, 273.15, 1e-3, _ => 0, drawn_kg / 1e-3, 400);
        Assert.Equal(t_C, end.T_K - 273.15, 0.006);
        // Half a unit of the digit printed, and a hair for rounding.
        if (p_kPa is double p) Assert.Equal(p, body.Contents(end.Mass_kg, end.T_K).Pressure_Pa / 1000, 0.051);
    }

    [Theory]
    [InlineData(0.10, -1.49, 453.2)]
    [InlineData(0.25, -3.77, 422.1)]
    [InlineData(0.50, -7.71, 372.2)]
    [InlineData(1.00, -16.12, 280.5)]
    [InlineData(1.50, -25.36, 200.7)]
    [InlineData(2.00, -35.54, 134.2)]
    [InlineData(3.00, -59.44, 44.0)]
    public void A_full_20_lb_cylinder_without_heat_cools_along_curve_A(double drawn_kg, double t_C, double p_kPa)
        => Check(Vessel(21.61, 7.0), 9.072, drawn_kg, t_C, p_kPa);

    [Theory]
    [InlineData(0.10, -1.70)]
    [InlineData(0.25, -4.32)]
    [InlineData(0.50, -8.87)]
    [InlineData(1.00, -18.72)]
    [InlineData(1.50, -29.73)]
    [InlineData(2.00, -42.15)]
    [InlineData(3.00, -72.52)]
    public void Without_its_steel_it_cools_faster_along_curve_B(double drawn_kg, double t_C)
        => Check(Vessel(21.61, 0), 9.072, drawn_kg, t_C, null);

    [Theory]
    [InlineData(0.05, -1.87, 447.9)]
    [InlineData(0.10, -3.79, 421.9)]
    [InlineData(0.20, -7.77, 371.5)]
    [InlineData(0.30, -11.96, 323.5)]
    [InlineData(0.40, -16.37, 278.0)]
    [InlineData(0.50, -21.04, 235.5)]
    [InlineData(0.75, -33.99, 143.0)]
    public void A_quarter_full_it_cools_along_curve_C(double drawn_kg, double t_C, double p_kPa)
        => Check(Vessel(21.61, 7.0), 2.268, drawn_kg, t_C, p_kPa);

    // A half-full 30 lb size in air of -10 °C feeds 30,000 Btu/h.
    [Theory]
    [InlineData(1.9, 0.5, -15.23, 289.3)]
    [InlineData(1.9, 1, -19.99, 244.6)]
    [InlineData(1.9, 2, -28.13, 180.6)]
    [InlineData(1.9, 4, -39.48, 113.6)]
    [InlineData(1.9, 6, -45.71, 86.2)]
    [InlineData(1.9, 8, -48.62, 75.3)]
    [InlineData(4.0, 0.5, -14.82, null)]
    [InlineData(4.0, 1, -18.49, null)]
    [InlineData(4.0, 2, -23.27, null)]
    [InlineData(4.0, 4, -27.06, null)]
    [InlineData(4.0, 6, -27.90, null)]
    [InlineData(4.0, 8, -28.03, null)]
    public void With_a_constant_conductance_it_settles_along_curves_D_and_E(double ua_W_K, double hours, double t_C, double? p_kPa)
    {
        CylinderBody body = Vessel(32.42, 10.5);
        Drawn end = ForcedDraw.After(body, 6.804, 263.15, 1.7469e-4, t_K => ua_W_K * (263.15 - t_K), 3600 * hours, 2000);
        Assert.Equal(t_C, end.T_K - 273.15, 0.006);
        if (p_kPa is double p) Assert.Equal(p, body.Contents(end.Mass_kg, end.T_K).Pressure_Pa / 1000, 0.051);
    }
}
