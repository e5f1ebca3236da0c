using ColdSim.Model.Cylinder;
using ColdSim.Physics.Geometry;
using ColdSim.Physics.Propane;
using UnitsNet;

namespace ColdSim.Planning.Gauges;

/// <summary>What scale, level, float, line, pressure gauge, thermometer and echo show of one cylinder at one temperature of its liquid.</summary>
internal sealed record InstrumentReadings
{
    /// <summary>Liquid, and the vapour above it.</summary>
    public required Temperature Liquid { get; init; }

    /// <summary>What a scale shows: tare, gas and frost.</summary>
    public required Mass Scale { get; init; }

    /// <summary>Gas in it, liquid and vapour.</summary>
    public required Mass Gas { get; init; }

    /// <summary>Frost on its wetted wall, which a scale weighs as gas.</summary>
    public required Mass Frost { get; init; }

    /// <summary>The gas as part of the legal filling.</summary>
    public required Ratio OfLegalFill { get; init; }

    /// <summary>Liquid as part of the volume, which a float or dial shows.</summary>
    public required Ratio OfVolume { get; init; }

    /// <summary>Liquid as part of the height inside, which a strip or sight shows.</summary>
    public required Ratio OfHeight { get; init; }

    /// <summary>Height of the liquid's surface above the lowest point inside: an echo's distance.</summary>
    public required Length Level { get; init; }

    /// <summary>Height of the line that hot water shows, above the lowest point of the body outside.</summary>
    public required Length Line { get; init; }

    /// <summary>Height of the frost's edge, above the same point; null without frost that can be seen.</summary>
    public required Length? FrostLine { get; init; }

    /// <summary>Pressure in it, above that of the air.</summary>
    public required Pressure Gauge { get; init; }

    /// <summary>The steel below the level; null where it is not known.</summary>
    public required Temperature? WallBelow { get; init; }

    /// <summary>The steel above the level: its mean, or under a blanket its hottest place; null where it is not known.</summary>
    public required Temperature? WallAbove { get; init; }

    /// <summary>Time of flight from the lowest point to the surface and back; null for a mixed gas, whose sound is not known here.</summary>
    public required Duration? EchoTime { get; init; }

    /// <summary>The height that an echo sensor made for one temperature shows; null likewise.</summary>
    public required Length? EchoHeight { get; init; }

    /// <summary>That as part of the height inside; null likewise.</summary>
    public required Ratio? EchoOfHeight { get; init; }

    /// <summary>That as part of the volume inside; null likewise, and where it shows more than the height inside.</summary>
    public required Ratio? EchoOfVolume { get; init; }

    /// <summary>That as part of the height of a full cylinder's level (<see cref="EchoReading.Full_frac"/>); null likewise.</summary>
    public required Ratio? EchoOfFull { get; init; }

    /// <summary>Whether there is liquid.</summary>
    public required bool HasLiquid { get; init; }

    /// <summary>Whether the liquid would fill it; level and pressure then mean nothing.</summary>
    public required bool IsLiquidFull { get; init; }

    /// <summary>The readings of a cylinder's contents.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="contents">What is in it at the liquid's temperature.</param>
    /// <param name="gas_kg">Gas in it. [kg]</param>
    /// <param name="liquid_K">The liquid's temperature. [K]</param>
    /// <param name="isPropane">Whether the gas is propane alone, whose speed of sound is known.</param>
    /// <param name="around">What surrounds it.</param>
    /// <param name="assumed_K">The temperature that an echo sensor is made for. [K]</param>
    public static InstrumentReadings Of(
        CylinderBody body, in CylinderContents contents, double gas_kg, double liquid_K, bool isPropane, in AroundCylinder around,
        double assumed_K)
    {
        PressureVessel vessel = body.Vessel;
        bool full = contents.LiquidVolume_m3 >= vessel.Volume_m3;
        double liquid_m3 = Math.Clamp(contents.LiquidVolume_m3, 0, vessel.Volume_m3), level_m = vessel.LiquidLevel_m(liquid_m3);
        double line_m = level_m + vessel.WallThickness_m;
        double? echo_s = isPropane ? 2 * level_m / PropaneSaturation.LiquidSpeedOfSound_m_s(LevelInputs.Clamp_K(liquid_K)) : null;
        double? shown_m = 0.5 * echo_s * PropaneSaturation.LiquidSpeedOfSound_m_s(assumed_K);
        return new()
        {
            Liquid = Temperature.FromKelvins(liquid_K),
            Scale = Mass.FromKilograms(body.Specification.Tare_kg + gas_kg + around.Frost_kg),
            Gas = Mass.FromKilograms(gas_kg),
            Frost = Mass.FromKilograms(around.Frost_kg),
            OfLegalFill = Ratio.FromDecimalFractions(gas_kg / body.Specification.LegalFill_kg),
            OfVolume = Ratio.FromDecimalFractions(liquid_m3 / vessel.Volume_m3),
            OfHeight = Ratio.FromDecimalFractions(level_m / vessel.FullLevel_m),
            Level = Length.FromMeters(level_m),
            Line = Length.FromMeters(line_m),
            FrostLine = around.FrostLine_m is { } edge_m ? Length.FromMeters(edge_m) : null,
            Gauge = Pressure.FromPascals(contents.Pressure_Pa - around.Air_Pa),
            WallBelow = around.WallBelow_K is { } below_K ? Temperature.FromKelvins(below_K) : null,
            WallAbove = around.WallAbove_K is { } above_K ? Temperature.FromKelvins(above_K) : null,
            EchoTime = echo_s is { } s ? Duration.FromSeconds(s) : null,
            EchoHeight = shown_m is { } m ? Length.FromMeters(m) : null,
            EchoOfHeight = Part(shown_m / vessel.FullLevel_m),
            EchoOfVolume = shown_m <= vessel.FullLevel_m ? Part(vessel.VolumeAtLevel_m3(shown_m.Value) / vessel.Volume_m3) : null,
            EchoOfFull = Part(shown_m / vessel.LiquidLevel_m(EchoReading.Full_frac * vessel.Volume_m3)),
            HasLiquid = contents.HasLiquid,
            IsLiquidFull = full,
        };
    }

    private static Ratio? Part(double? part_frac) => part_frac is { } part ? Ratio.FromDecimalFractions(part) : null;
}

/// <summary>What surrounds a cylinder at an instant, as far as its readings depend on it. SI units.</summary>
/// <param name="Air_Pa">Pressure of the air. [Pa]</param>
/// <param name="Frost_kg">Frost on its wetted wall. [kg]</param>
/// <param name="FrostLine_m">Height of that frost's edge above the lowest point of the body outside; null without frost that can be seen. [m]</param>
/// <param name="WallBelow_K">The steel below the level; null where it is not known. [K]</param>
/// <param name="WallAbove_K">The steel above the level; null where it is not known. [K]</param>
internal readonly record struct AroundCylinder(double Air_Pa, double Frost_kg, double? FrostLine_m, double? WallBelow_K, double? WallAbove_K);
