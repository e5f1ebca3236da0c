using System.Globalization;
using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Units;
using ColdSim.Planning.Quick;

namespace ColdSim.Planning.Capacity;

/// <summary>Which time a capacity is for.</summary>
public enum CapacityTimeKind
{
    /// <summary>A span in air that stays as it is.</summary>
    Span,

    /// <summary>A whole night, from 16:00 to 07:00, in which the air falls to the low.</summary>
    Night,

    /// <summary>Without end, at a fill that stays as it is.</summary>
    WithoutEnd,
}

/// <summary>The time a capacity is for.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Time_s">How long; infinite without end. [s]</param>
public readonly record struct CapacityTime(CapacityTimeKind Kind, double Time_s)
{
    /// <summary>A night of <see cref="NightShape"/>.</summary>
    public static CapacityTime Night { get; } = new(CapacityTimeKind.Night, 15 * 3600);

    /// <summary>Without end.</summary>
    public static CapacityTime WithoutEnd { get; } = new(CapacityTimeKind.WithoutEnd, double.PositiveInfinity);

    /// <summary>A span.</summary>
    /// <param name="hours">How long. [h]</param>
    public static CapacityTime Hours(double hours) => new(CapacityTimeKind.Span, hours * 3600);

    /// <summary>Shown beside each other: 1, 4 and 8 hours, a night, without end.</summary>
    public static IReadOnlyList<CapacityTime> Usual { get; } = [Hours(1), Hours(4), Hours(8), Night, WithoutEnd];
}

/// <summary>What one cylinder can give: at which air temperatures, fills and for which times. SI units.</summary>
public sealed record CapacityQuestion
{
    /// <summary>The cylinder with its surroundings.</summary>
    public required CylinderSpecification Cylinder { get; init; }

    /// <summary>Air temperatures; of a night its low. [K]</summary>
    public required IReadOnlyList<double> Lows_K { get; init; }

    /// <summary>Parts of the legal filling.</summary>
    public required IReadOnlyList<double> Fills_frac { get; init; }

    /// <summary>The times.</summary>
    public required IReadOnlyList<CapacityTime> Times { get; init; }

    /// <summary>Wind at mast height; null takes what <c>tonight</c> takes. [m/s]</summary>
    public double? MastWind_m_s { get; init; }

    /// <summary>The regulator.</summary>
    public RegulatorSpecification Regulator { get; init; } = new();

    /// <summary>The air beside its temperature: what <c>tonight</c> assumes where nothing is said.</summary>
    public WeatherDefaults Air => new QuickNight { Noon = default, Start = default, MastWind_m_s = MastWind_m_s }.Air;

    /// <summary>Everything that was assumed, in plain words.</summary>
    public IReadOnlyList<string> Assumptions()
    {
        List<string> assumed = [];
        if (MastWind_m_s is null)
            assumed.Add(Text($"wind {QuickNight.Wind_m_s / ConversionFactors.MilePerHour_m_s:0} mph ({QuickNight.Wind_m_s:0.#} m/s) at mast height"));
        assumed.Add(Text($"cylinder sheltered to {100 * Cylinder.Surroundings.WindExposure_frac:0} % of that wind, seeing half the sky"));
        assumed.Add("clear sky, 75 % relative humidity, no sun, sea level");
        assumed.Add("cylinder as cold as the air and without frost when the draw begins");
        assumed.Add("propane alone; two-stage regulator, 160,000 BTU/h (47 kW), minimum inlet 5 psi (345 mbar); the draw needs 10.5 inH2O (26 mbar)");
        return assumed;
    }

    /// <summary>The cylinder alone, at a fill.</summary>
    /// <param name="fill_frac">Part of the legal filling.</param>
    internal Rig RigAt(double fill_frac) => new()
    {
        Cylinders = [Cylinder with { Contents_kg = fill_frac * Cylinder.LegalFill_kg }],
        Regulator = Regulator,
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
