using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using ColdSim.Planning.Capacity;
using ColdSim.Tests.Model.Cylinder;

namespace ColdSim.Tests.Planning.Capacity;

/// <summary>A printed capacity of a cylinder or tank, and what the model gives there for a time: still, shaded air, a cylinder as warm as the air when the draw begins.</summary>
/// <param name="Name">Whose figure it is.</param>
/// <param name="Case">Which of its cases.</param>
/// <param name="Printed_W">The figure, as gross heat. [W]</param>
/// <param name="Cylinder">The cylinder, filled as the rule says or as is assumed.</param>
/// <param name="Air_K">Air. [K]</param>
/// <param name="Liquid_K">The liquid that the rule allows; NaN where it says nothing of it, and the regulator's need ends the draw. [K]</param>
internal sealed record TradeRule(string Name, string Case, double Printed_W, CylinderSpecification Cylinder, double Air_K, double Liquid_K)
{
    public const double HeatingValue_J_kg = 50.33e6;
    public const double Breeze_m_s = 1.5;
    private const double Humidity_frac = 0.75;
    private const double Longest_h = 30;

    private static readonly DateTimeOffset Start = new(2001, 1, 14, 12, 0, 0, TimeSpan.Zero);

    public static double Fahrenheit(double f) => (f + ConversionFactors.ZeroFahrenheit_R) / 1.8;

    /// <summary>The greatest draw that is fed for a time. [W]</summary>
    public double For_W(double hours)
    {
        double endless_W = WithoutEnd_W(0), all_W = Cylinder.Contents_kg * HeatingValue_J_kg / (hours * 3600);
        return LastingDraw.For(Conditions(0), hours * 3600, Math.Min(0.9 * all_W, endless_W * (1 + 1 / hours))).Draw_W;
    }

    /// <summary>The draw whose heat flows in at the fill as it is, in dry air and without frost. [W]</summary>
    public double WithoutEnd_W(double wind_m_s)
    {
        WeatherSample weather = Some.Weather(Air_K, wind_m_s);
        return double.IsNaN(Liquid_K)
            ? EndlessDraw.For(Conditions(wind_m_s).Rig, weather, Cylinder.Contents_kg, DrawConditions.UsualDelivery_Pa).Draw_W
            : SteadySupply.Draw_kg_s(new CylinderBody(Cylinder), weather, Cylinder.Contents_kg, Liquid_K, 0, default) * HeatingValue_J_kg;
    }

    /// <summary>The liquid after a time of the printed draw, NaN where it is not fed for so long, and what is left by then. [K, kg]</summary>
    public (double Liquid_K, double Left_kg) After(double hours)
    {
        DrawOutcome outcome = DrawRun.Of(Conditions(0) with { Delivery_Pa = 1, ColdestLiquid_K = 0 }, Printed_W, hours * 3600, default);
        return (outcome.Failed ? double.NaN : outcome.Liquid_K, outcome.Left_kg);
    }

    /// <summary>The liquid at which the heat of the printed draw flows in without end; NaN where it would be below the boiling point in air. [K]</summary>
    public double LiquidWithoutEnd_K()
    {
        CylinderBody body = new(Cylinder);
        WeatherSample weather = Some.Weather(Air_K);
        double Draw_W(double liquid_K) => SteadySupply.Draw_kg_s(body, weather, Cylinder.Contents_kg, liquid_K, 0, default) * HeatingValue_J_kg;
        double low_K = ReferenceEquation.NormalBoilingPoint_K, high_K = Air_K;
        if (Draw_W(low_K) < Printed_W) return double.NaN;
        while (high_K - low_K > 0.01)
        {
            double middle_K = 0.5 * (low_K + high_K);
            if (Draw_W(middle_K) >= Printed_W) low_K = middle_K;
            else high_K = middle_K;
        }

        return low_K;
    }

    // A regulator that passes what is asked: of a rule that names a liquid, at next to no pressure, so that the liquid alone ends the draw.
    private DrawConditions Conditions(double wind_m_s)
    {
        bool byLiquid = !double.IsNaN(Liquid_K);
        WeatherSeries weather = new([new(Start, Air_K), new(Start.AddHours(Longest_h), Air_K)], new() { Wind_m_s = wind_m_s, RelativeHumidity_frac = Humidity_frac }, new());
        return new()
        {
            Rig = new Rig { Cylinders = [Cylinder], Regulator = new RegulatorSpecification { RatedFlow_W = byLiquid ? 1e9 : Math.Max(new RegulatorSpecification().RatedFlow_W, 3 * Printed_W) } },
            Weather = weather,
            Start = Start,
            Delivery_Pa = byLiquid ? 1 : DrawConditions.UsualDelivery_Pa,
            ColdestLiquid_K = byLiquid ? Liquid_K : 0,
        };
    }
}
