using ColdSim.Model.Cylinder;
using ColdSim.Physics.Geometry;
using ColdSim.Physics.Propane;
using ColdSim.Planning.Gauges;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Planning.Gauges;

public class GaugeReadingTests
{
    private const double Zero_K = 273.15;
    private const double Pound_kg = 0.45359237;
    private static readonly string[] Sizes = ["5 lb", "20 lb", "100 lb", "10 gal", "25 gal"];

    internal static GaugedCylinder Cylinder(string name)
    {
        StandardSize size = StandardSize.Find(name)!;
        return new()
        {
            Name = size.Name,
            Orientation = size.Orientation,
            Volume_m3 = size.Volume_m3,
            OutsideDiameter_m = size.OutsideDiameter_m,
            WallThickness_m = size.WallThickness_m,
            LegalFill_kg = size.LegalFill_kg,
        };
    }

    internal static LevelInputs At(double t_K) => new() { Temperature_K = t_K, TemperatureError_K = 2 };

    internal static WeightReading Weighed(string name, double scale_kg) => new() { Name = name, Scale_kg = scale_kg, Tare_kg = 8, TareError_kg = 0.12, ScaleError_kg = 0.09 };

    [Fact]
    public void Every_method_gives_back_the_mass_it_was_read_from()
        => Gen.Select(Gen.Int[0, 4].Select(i => Sizes[i]), Gen.Double[0.02, 1], Gen.Double[-40, 45], Gen.Double[-40, 40])
            .Sample((name, part, t_C, assumed_C) =>
            {
                GaugedCylinder cylinder = Cylinder(name);
                double t_K = t_C + Zero_K, assumed_K = assumed_C + Zero_K;
                double mass_kg = Math.Max(part * cylinder.LegalFill_kg, 1.1 * cylinder.Volume_m3 * PropaneSaturation.VapourDensity_kg_m3(t_K));
                ExpectedReading shown = DriftTable.At(cylinder, mass_kg, t_K, assumed_K);
                List<GaugeReading> readings =
                [
                    Weighed("weight", mass_kg + 8),
                    new EchoReading { Name = "time", Shown = EchoShown.Time, Value = shown.Echo.Seconds, Level = At(t_K) },
                    new EchoReading { Name = "height", Shown = EchoShown.Height, Value = shown.EchoShown.DecimalFractions * cylinder.Vessel().FullLevel_m, Assumed_K = assumed_K, Level = At(t_K) },
                    new EchoReading { Name = "percent", Shown = EchoShown.PartOfHeight, Value = shown.EchoShown.DecimalFractions, Assumed_K = assumed_K, Level = At(t_K) },
                    new EchoReading
                    {
                        Name = "part of full",
                        Shown = EchoShown.PartOfFull,
                        Value = shown.EchoShown.DecimalFractions * cylinder.Vessel().FullLevel_m / cylinder.Vessel().LiquidLevel_m(0.8 * cylinder.Volume_m3),
                        Assumed_K = assumed_K,
                        Level = At(t_K),
                    },
                    new HeightReading { Name = "level", Shown_frac = shown.Level.Meters / cylinder.Vessel().FullLevel_m, Level = At(t_K) },
                    new LineReading { Name = "line", Height_m = shown.Level.Meters + cylinder.WallThickness_m + 0.03, Foot_m = 0.03, Level = At(t_K) },
                ];
                double seen_m = shown.EchoShown.DecimalFractions * cylinder.Vessel().FullLevel_m;
                if (seen_m <= cylinder.Vessel().FullLevel_m)
                {
                    double ofVolume = cylinder.Vessel().VolumeAtLevel_m3(seen_m) / cylinder.Volume_m3;
                    readings.Add(new EchoReading { Name = "part of volume", Shown = EchoShown.PartOfVolume, Value = ofVolume, Assumed_K = assumed_K, Level = At(t_K) });
                }

                if (cylinder.Lies)
                    readings.Add(new FloatReading { Name = "float", Shown_frac = shown.Liquid.DecimalFractions, Level = At(t_K) });
                foreach (GaugeReading reading in readings)
                    Assert.Equal(1, reading.Estimate(cylinder).Mass.Kilograms / mass_kg, 1e-8);
            }, iter: 300);

    [Fact]
    public void A_third_full_at_30_C_is_30_8_percent_at_minus_30_with_the_vapour_counted_and_28_5_by_density_alone()
    {
        const double warm_K = 30 + Zero_K, cold_K = -30 + Zero_K;
        GaugedCylinder cylinder = Cylinder("20 lb");
        double liquid_m3 = cylinder.Volume_m3 / 3;
        double mass_kg = liquid_m3 * PropaneSaturation.LiquidDensity_kg_m3(warm_K) + 2 * liquid_m3 * PropaneSaturation.VapourDensity_kg_m3(warm_K);
        Assert.Equal(30.8, DriftTable.At(cylinder, mass_kg, cold_K).Liquid.Percent, 0.06);
        Assert.Equal(28.5, 100.0 / 3 * PropaneSaturation.LiquidDensity_kg_m3(warm_K) / PropaneSaturation.LiquidDensity_kg_m3(cold_K), 0.05);
    }

    // The trade reckons with the liquid alone. Closed, it is less: some of the liquid evaporates into the space above, at 10 °C six times as dense as at boiling.
    [Fact, Outside("common practice, no source", Field.Cylinder)]
    public void A_level_of_30_percent_of_the_volume_drawn_down_to_boiling_at_air_pressure_reads_about_34_at_10_C()
    {
        const double boiling_K = 231.036, warm_K = 10 + Zero_K;
        GaugedCylinder tank = Cylinder("20 gal");
        FloatReading read = new() { Name = "float", Shown_frac = 0.3, Level = At(boiling_K) };
        double mass_kg = read.Estimate(tank).Mass.Kilograms, space_m3 = 0.7 * tank.Volume_m3;
        ExpectedReading warmed = DriftTable.At(tank, mass_kg, warm_K);
        double liquid_kg = mass_kg - space_m3 * PropaneSaturation.VapourDensity_kg_m3(boiling_K);
        double liquidAlone = 100 * liquid_kg / PropaneSaturation.LiquidDensity_kg_m3(warm_K) / tank.Volume_m3;
        Assert.Equal(34, liquidAlone, 0.5);
        Assert.Equal(33.9, liquidAlone, 0.05);
        Assert.Equal(32.4, warmed.Liquid.Percent, 0.05);

        // What is between the two is the vapour's growth and nothing else.
        double vapour_kg = (1 - warmed.Liquid.DecimalFractions) * tank.Volume_m3 * PropaneSaturation.VapourDensity_kg_m3(warm_K) - (mass_kg - liquid_kg);
        Assert.Equal(liquidAlone - warmed.Liquid.Percent, 100 * vapour_kg / PropaneSaturation.LiquidDensity_kg_m3(warm_K) / tank.Volume_m3, 0.01);
    }

    [Fact]
    public void Eighty_percent_filled_at_60_F_reads_77_7_percent_at_40_F()
    {
        const double filled_K = (60 + 459.67) / 1.8, read_K = (40 + 459.67) / 1.8;
        GaugedCylinder tank = Cylinder("20 gal");
        FloatReading full = new() { Name = "float", Shown_frac = 0.8, Level = At(filled_K) };
        double mass_kg = full.Estimate(tank).Mass.Kilograms;
        double vapour = PropaneSaturation.VapourDensity_kg_m3(read_K);
        double expected = (mass_kg / tank.Volume_m3 - vapour) / (PropaneSaturation.LiquidDensity_kg_m3(read_K) - vapour);
        double shown = DriftTable.At(tank, mass_kg, read_K).Liquid.DecimalFractions;
        Assert.Equal(expected, shown, 1e-6);
        Assert.Equal(0.777, shown, 0.001);

        // The filling rule's volume factor alone, without vapour, gives nearly the same: 80 / 1.031.
        Assert.Equal(0.8 / 1.031, shown, 0.002);
    }

    [Theory]
    [InlineData(-30, 1082)]
    [InlineData(30, 685)]
    public void Sound_in_saturated_liquid_is_fast_when_cold(double t_C, double m_s)
        => Assert.Equal(m_s, PropaneSaturation.LiquidSpeedOfSound_m_s(t_C + Zero_K), 1.0);

    [Fact]
    public void An_uncorrected_echo_misleads_more_than_density_does()
    {
        GaugedCylinder cylinder = Cylinder("20 lb");
        ExpectedReading cold = DriftTable.At(cylinder, 3, -30 + Zero_K), warm = DriftTable.At(cylinder, 3, 20 + Zero_K);
        Assert.True(warm.EchoShown - cold.EchoShown > 5 * ((warm.Level - cold.Level) / cylinder.Vessel().FullLevel_m).Meters * UnitsNet.Ratio.FromDecimalFractions(1));
    }

    [Fact]
    public void The_doc_page_s_four_points_come_out_with_its_shares()
    {
        // 20 lb cylinder that an uncorrected sensor shows near a third full when its liquid is at 17 °F; drawn down to -10 °F; 2 mm of frost of 150 kg/m³ on the wetted wall.
        GaugedCylinder cylinder = Cylinder("20 lb");
        const double warm_K = (17 + 459.67) / 1.8, cold_K = (-10 + 459.67) / 1.8;
        const double mass_kg = 10.5 * Pound_kg;
        PressureVessel vessel = cylinder.Vessel();
        ExpectedReading warm = DriftTable.At(cylinder, mass_kg, warm_K), cold = DriftTable.At(cylinder, mass_kg, cold_K);
        double frost_kg = 0.002 * 150 * vessel.WettedArea_m2(cold.Level.Meters);
        ExpectedReading frosted = DriftTable.At(cylinder, mass_kg - frost_kg, cold_K);
        double density = warm.EchoShown.Percent * (1 - cold.Level / warm.Level);
        double sound = warm.EchoShown.Percent - cold.EchoShown.Percent - density;
        double frost = cold.EchoShown.Percent - frosted.EchoShown.Percent;
        string found = FormattableString.Invariant($"{warm.EchoShown.Percent:0.0} {frosted.EchoShown.Percent:0.0} density {density:0.0} sound {sound:0.0} frost {frost:0.0} ({frost_kg / Pound_kg:0.00} lb)");
        Assert.Equal("33.2 29.2 density 0.7 sound 3.1 frost 0.3 (0.11 lb)", found);
    }

    [Fact]
    public void Errors_add_as_squares_and_a_straight_function_keeps_them_as_they_are()
    {
        ContentsEstimate weighed = Weighed("weight", 14).Estimate(Cylinder("20 lb"));
        Assert.Equal(6, weighed.Mass.Kilograms, 1e-12);
        Assert.Equal(0.15, weighed.StandardUncertainty.Kilograms, 1e-12);
        Assert.Equal(-0.12, weighed.Shares[1].Change_kg, 1e-12);
    }

    [Fact]
    public void A_float_s_error_is_the_slope_times_the_error()
    {
        GaugedCylinder tank = Cylinder("20 gal");
        FloatReading reading = new() { Name = "float", Shown_frac = 0.4, ShownError_frac = 0.02, Level = At(263.15) };
        double slope_kg = tank.Volume_m3 * (PropaneSaturation.LiquidDensity_kg_m3(263.15) - PropaneSaturation.VapourDensity_kg_m3(263.15));
        Assert.Equal(0.02 * slope_kg, reading.Estimate(tank).Shares[0].Change_kg, 1e-6);
    }

    [Fact]
    public void A_sensor_off_the_lowest_point_sees_too_little()
    {
        EchoReading reading = new() { Name = "echo", Shown = EchoShown.Time, Value = 3e-4, PositionError_m = 0.05, Level = At(263.15) };
        Assert.True(reading.Estimate(Cylinder("20 lb")).Shares[1].Change_kg > 0.02);
    }

    [Fact]
    public void Impossible_readings_are_refused_with_a_sentence()
    {
        static string Fault(string cylinder, GaugeReading reading) => Assert.Throws<ImpossibleReadingException>(
            () => GaugeReport.Of(new() { Cylinder = Cylinder(cylinder), Readings = [reading] })).Message;
        Assert.Contains("less than an empty cylinder", Fault("20 lb", Weighed("weight", 6)), StringComparison.Ordinal);
        Assert.Contains("more than liquid", Fault("20 lb", Weighed("weight", 40)), StringComparison.Ordinal);
        Assert.Contains("inside it is", Fault("20 lb", new LineReading { Name = "line", Height_m = 0.6, Level = At(263) }), StringComparison.Ordinal);
        Assert.Contains("lying tanks only", Fault("20 lb", new FloatReading { Name = "float", Shown_frac = 0.6, Level = At(263) }), StringComparison.Ordinal);
    }

    // 822 used and 9,482 new 20 lb cylinders: part whose stamped tare is within -3/+1 %.
    [Fact]
    public void The_error_taken_for_a_stamped_tare_lies_between_used_and_new_cylinders()
    {
        // An even spread from -3 to +1 has this root mean square; a bell of that width then holds a part between the two surveyed.
        Assert.Equal(WeightReading.StampedTareError_frac, Math.Sqrt((27 + 1) / 3.0 / 4) / 100, 0.0005);
        double part = MathNet.Numerics.Distributions.Normal.CDF(0, 1.5, 1) - MathNet.Numerics.Distributions.Normal.CDF(0, 1.5, -3);
        Assert.InRange(part, 0.657, 0.984);
    }
}
