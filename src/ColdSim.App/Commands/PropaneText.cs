using ColdSim.App.Text;

namespace ColdSim.App.Commands;

/// <summary>Saturated propane in both unit systems, side by side.</summary>
internal static class PropaneText
{
    private const double SeaLevel_Pa = 101_325;
    private const double PoundPerCubicFoot_kg_m3 = 16.018463373960142;
    private const double BtuPerPound_J_kg = 2326;

    public static void Write(TextWriter to, double t_K, SaturatedPropane state)
    {
        UnitStyle us = UnitStyle.Us, si = UnitStyle.Si;
        IReadOnlyList<IReadOnlyList<string>> rows =
        [
            ["temperature", UnitStyle.Number(si.TemperatureIn(t_K), 2), "°C", UnitStyle.Number(us.TemperatureIn(t_K), 2), "°F"],
            ["pressure", UnitStyle.Number(state.Pressure_Pa / 1e3, 2), "kPa", UnitStyle.Number(us.PressureIn(state.Pressure_Pa), 2), "psi absolute"],
            ["above sea-level air", UnitStyle.Number((state.Pressure_Pa - SeaLevel_Pa) / 1e3, 2), "kPa",
                UnitStyle.Number(us.PressureIn(state.Pressure_Pa - SeaLevel_Pa), 2), "psi gauge"],
            ["liquid density", UnitStyle.Number(state.Liquid_kg_m3, 2), "kg/m³", UnitStyle.Number(state.Liquid_kg_m3 / PoundPerCubicFoot_kg_m3, 3), "lb/ft³"],
            ["vapour density", UnitStyle.Number(state.Vapour_kg_m3, 4), "kg/m³", UnitStyle.Number(state.Vapour_kg_m3 / PoundPerCubicFoot_kg_m3, 4), "lb/ft³"],
            ["latent heat", UnitStyle.Number(state.LatentHeat_J_kg / 1e3, 2), "kJ/kg", UnitStyle.Number(state.LatentHeat_J_kg / BtuPerPound_J_kg, 2), "BTU/lb"],
        ];
        TextColumn left = new([], Left: true), right = new([]);
        to.WriteLine("Saturated propane");
        foreach (string line in TextTable.Lines([left, right, left, right, left], rows, gap: 2))
            to.WriteLine(line);
    }
}
