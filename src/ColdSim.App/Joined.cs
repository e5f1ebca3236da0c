using System.Runtime.CompilerServices;
using ColdSim.App.Commands;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Physics.Propane;
using ColdSim.Planning.Nights;

namespace ColdSim.App;

/// <summary>Joins the commands to the rest of the program; nothing here runs before a command needs it.</summary>
internal static class Joined
{
    public static Parts Parts() => new()
    {
        ReadScenario = _ => throw new NotSupportedException("reading scenario files is not there yet"),
        ReadDemo = () => throw new NotSupportedException("the demo is not there yet"),
        Run = NightRun.Of,
        WriteJson = (_, _) => throw new NotSupportedException("writing JSON is not there yet"),
        WriteCsv = (_, _) => throw new NotSupportedException("writing CSV is not there yet"),
        WriteFile = AtomicFile.Write,
        StarterText = () => throw new NotSupportedException("the starter scenario is not there yet"),
        FindCylinder = _ => throw new NotSupportedException("the common cylinders are not there yet"),
        CylinderNames = [],
        Propane = Propane,
        Show = Show,
        Cautions = () => [],
    };

    private static SaturatedPropane Propane(double t_K) => new(
        PropaneSaturation.Pressure_Pa(t_K),
        PropaneSaturation.LiquidDensity_kg_m3(t_K),
        PropaneSaturation.VapourDensity_kg_m3(t_K),
        PropaneSaturation.LatentHeat_J_kg(t_K));

    /// <summary>Apart, so that no screen code is loaded before a screen opens.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Show(RunReport report, UnitStyle units, bool color)
        => throw new NotSupportedException("the screen is not there yet");
}
