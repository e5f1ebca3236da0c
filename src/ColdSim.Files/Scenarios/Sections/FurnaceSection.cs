using ColdSim.Files.Quantities;
using ColdSim.Model.Appliances;
using ColdSim.Model.Furnace;
using ColdSim.Planning;

namespace ColdSim.Files.Scenarios.Sections;

/// <summary><c>[furnace]</c>: a forced-air furnace by its plate and its ignition board.</summary>
internal static class FurnaceSection
{
    private static readonly QuantityKey Input = new("input", Dimension.Power, "300 W", "60 kW");
    private static readonly QuantityKey Efficiency = new("efficiency", Dimension.Ratio, "0.3", "1");
    private static readonly QuantityKey FanCurrent = new("fan_current", Dimension.Current, "0 A", "60 A");
    private static readonly QuantityKey FullPressure = new("full_pressure", Dimension.Pressure, "500 Pa", "10 kPa");
    private static readonly QuantityKey IgnitionPressure = new("ignition_pressure", Dimension.Pressure, "100 Pa", "10 kPa");
    private static readonly QuantityKey DropOutPressure = new("drop_out_pressure", Dimension.Pressure, "50 Pa", "10 kPa");
    private static readonly QuantityKey PrePurge = new("pre_purge", Dimension.Duration, "0 s", "5 min");
    private static readonly QuantityKey Trial = new("trial", Dimension.Duration, "1 s", "60 s");
    private static readonly QuantityKey RetryPurge = new("retry_purge", Dimension.Duration, "0 s", "10 min");
    private static readonly QuantityKey Lockout = new("lockout", Dimension.Duration, "1 min", "7 d");
    private static readonly QuantityKey PostPurge = new("post_purge", Dimension.Duration, "0 s", "10 min");

    public static (FurnaceSpecification? Furnace, DateTimeOffset? Stops) Read(SectionReader section, TimeSpan offset)
    {
        FurnaceSpecification defaults = new() { Input_W = 0 };
        FurnaceSpecification furnace = new()
        {
            Input_W = section.Present ? section.Require(Input) : section.Get(Input, double.NaN),
            Efficiency_frac = section.Get(Efficiency, defaults.Efficiency_frac),
            Altitude = section.Choice("altitude", ("fixed orifice", AltitudeRule.FixedOrifice), ("code percentage", AltitudeRule.CodePercentage))
                ?? defaults.Altitude,
            FanCurrent_A = section.Get(FanCurrent),
            FullPressure_Pa = section.Get(FullPressure, defaults.FullPressure_Pa),
            IgnitionPressure_Pa = section.Get(IgnitionPressure, defaults.IgnitionPressure_Pa),
            DropOutPressure_Pa = section.Get(DropOutPressure, defaults.DropOutPressure_Pa),
            PrePurge_s = section.Get(PrePurge, defaults.PrePurge_s),
            TrialForIgnition_s = section.Get(Trial, defaults.TrialForIgnition_s),
            RetryPurge_s = section.Get(RetryPurge, defaults.RetryPurge_s),
            Tries = section.Whole("tries", 1, 10) ?? defaults.Tries,
            Lockout_s = section.Get(Lockout, defaults.Lockout_s),
            PostPurge_s = section.Get(PostPurge, defaults.PostPurge_s),
        };
        DateTimeOffset? stops = section.Moment("stops_at", offset);
        section.Finish();
        if (!section.Present)
            return (null, null);
        if (!section.Has("efficiency"))
            section.Reading.Assume($"furnace: efficiency not given, taken as {defaults.Efficiency_frac:0.##}");
        if (furnace.IgnitionPressure_Pa > furnace.FullPressure_Pa)
            section.Report("ignition_pressure", "the ignition pressure is above the full pressure");
        if (furnace.DropOutPressure_Pa > furnace.IgnitionPressure_Pa)
            section.Report("drop_out_pressure", "the drop-out pressure is above the ignition pressure");
        return (furnace, stops);
    }

    /// <summary>Checks when it stops against the run.</summary>
    public static void CheckStop(SectionReader section, Scenario scenario)
    {
        if (scenario.HeatStops is not { } stops)
            return;
        if (stops < scenario.Start || stops >= scenario.End)
        {
            section.Report("stops_at", FormattableString.Invariant($"the furnace stops at {stops:yyyy-MM-dd'T'HH:mm:sszzz}, outside the run"),
                FormattableString.Invariant($"accepted: from {scenario.Start:yyyy-MM-dd'T'HH:mm:sszzz} to before {scenario.End:yyyy-MM-dd'T'HH:mm:sszzz}"));
            return;
        }

        section.Reading.Assume($"furnace: out from stops_at on; a night that has its gas and its voltage counts as holding, however cold it is inside");
    }
}
