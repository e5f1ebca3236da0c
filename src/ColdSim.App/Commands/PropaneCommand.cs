using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files.Quantities;
using ColdSim.Files.Results;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using ColdSim.Planning.Figures;
using UnitsNet;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim propane</c>: saturated propane at a temperature.</summary>
internal static class PropaneCommand
{
    private const double Lowest_C = -80;
    private const double Highest_C = 80;
    private const double Lowest_K = 193.15;
    private const double Highest_K = 353.15;
    private const double Rounding_K = 1e-9;
    private const double SeaLevel_Pa = 101_325;
    private const double PoundPerCubicFoot_kg_m3 = 16.018463373960142;
    private const double BtuPerPound_J_kg = 2326;

    /// <summary>What is reported in a document.</summary>
    public static IReadOnlyList<Figure<SaturatedPropane>> Figures { get; } =
    [
        Figure<SaturatedPropane>.Number("temperature_c", s => Math.Round(s.T_K - ConversionFactors.ZeroCelsius_K, 9), "as asked for", exact: true),
        Figure<SaturatedPropane>.Number("p_kpa", s => s.Pressure_Pa / 1e3, "vapour pressure, absolute", exact: true),
        Figure<SaturatedPropane>.Number("rho_liquid_kg_m3", s => s.Liquid_kg_m3, "density of the liquid", exact: true),
        Figure<SaturatedPropane>.Number("rho_vapour_kg_m3", s => s.Vapour_kg_m3, "density of the vapour", exact: true),
        Figure<SaturatedPropane>.Number("latent_heat_kj_kg", s => s.LatentHeat_J_kg / 1e3, "heat of evaporation", exact: true),
    ];

    public static Command Of(Host host)
    {
        Argument<string[]> temperature = new("TEMPERATURE")
        {
            Description = "With its unit, such as \"-20 °C\" or -4F; from -80 to 80 °C.",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<bool> json = CommonOptions.Json();
        ExampleCommand command = new(
            "propane",
            "Pressure, densities and latent heat of saturated propane at a temperature.",
            "coldsim propane \"-20 °C\"",
            "coldsim propane -4F",
            "coldsim propane -- -4F                    works as well",
            "coldsim propane 20C --json")
        { temperature, json };
        command.SetWork(host, parsed => Work(Read(string.Join(' ', parsed.GetRequiredValue(temperature)))), json: json);
        return command;
    }

    private static CommandWork<SaturatedPropane> Work(double t_K) => new()
    {
        Answer = (_, _) => new(
            t_K, PropaneSaturation.Pressure_Pa(t_K), PropaneSaturation.LiquidDensity_kg_m3(t_K), PropaneSaturation.VapourDensity_kg_m3(t_K), PropaneSaturation.LatentHeat_J_kg(t_K)),
        Text = (state, to) => to.Write(Lines(state)),
        Json = (state, to) => FigureJson.WriteDocument(Figures, state, to),
    };

    private static double Read(string text)
    {
        if (!QuantityText.TryParseTemperature(text, out Temperature temperature, out string fault))
            throw CommandFault.Input($"coldsim: temperature: {fault}");
        double t_C = temperature.Kelvins - ConversionFactors.ZeroCelsius_K;
        if (t_C < Lowest_C - Rounding_K || t_C > Highest_C + Rounding_K)
        {
            throw CommandFault.Input(
                $"coldsim: temperature: {text} is {UnitStyle.Number(t_C, 1)} °C; it must be from -80 to 80 °C (-112 to 176 °F)");
        }

        return Math.Clamp(temperature.Kelvins, Lowest_K, Highest_K);
    }

    // Both unit systems, side by side.
    private static IEnumerable<string> Lines(SaturatedPropane state)
    {
        UnitStyle us = UnitStyle.Us, si = UnitStyle.Si;
        IReadOnlyList<IReadOnlyList<string>> rows =
        [
            ["temperature", UnitStyle.Number(si.TemperatureIn(state.T_K), 2), "°C", UnitStyle.Number(us.TemperatureIn(state.T_K), 2), "°F"],
            ["pressure", UnitStyle.Number(state.Pressure_Pa / 1e3, 2), "kPa", UnitStyle.Number(us.PressureIn(state.Pressure_Pa), 2), "psi absolute"],
            ["above sea-level air", UnitStyle.Number((state.Pressure_Pa - SeaLevel_Pa) / 1e3, 2), "kPa",
                UnitStyle.Number(us.PressureIn(state.Pressure_Pa - SeaLevel_Pa), 2), "psi gauge"],
            ["liquid density", UnitStyle.Number(state.Liquid_kg_m3, 2), "kg/m³", UnitStyle.Number(state.Liquid_kg_m3 / PoundPerCubicFoot_kg_m3, 3), "lb/ft³"],
            ["vapour density", UnitStyle.Number(state.Vapour_kg_m3, 4), "kg/m³", UnitStyle.Number(state.Vapour_kg_m3 / PoundPerCubicFoot_kg_m3, 4), "lb/ft³"],
            ["latent heat", UnitStyle.Number(state.LatentHeat_J_kg / 1e3, 2), "kJ/kg", UnitStyle.Number(state.LatentHeat_J_kg / BtuPerPound_J_kg, 2), "BTU/lb"],
        ];
        TextColumn left = new([], Left: true), right = new([]);
        return ["Saturated propane", .. TextTable.Lines([left, right, left, right, left], rows, gap: 2)];
    }

    /// <summary>Saturated propane at a temperature.</summary>
    internal sealed record SaturatedPropane(double T_K, double Pressure_Pa, double Liquid_kg_m3, double Vapour_kg_m3, double LatentHeat_J_kg);
}
