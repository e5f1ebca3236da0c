using System.CommandLine;
using System.Text.Json;
using ColdSim.App.Text;
using ColdSim.Files.Quantities;
using UnitsNet;

namespace ColdSim.App.Commands;

/// <summary><c>coldsim propane</c>: saturated propane at a temperature.</summary>
internal static class PropaneCommand
{
    private const double Lowest_C = -80;
    private const double Highest_C = 80;
    private const double Zero_K = 273.15;
    private const double Lowest_K = 193.15;
    private const double Highest_K = 353.15;
    private const double Rounding_K = 1e-9;

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
        command.SetAction(parsed =>
        {
            double t_K = Read(string.Join(' ', parsed.GetRequiredValue(temperature)));
            SaturatedPropane state = host.Parts.Propane(t_K);
            if (parsed.GetValue(json))
                WriteJson(host, t_K, state);
            else
                PropaneText.Write(host.Out, t_K, state);
            return ExitCode.Done;
        });
        return command;
    }

    private static double Read(string text)
    {
        if (!QuantityText.TryParseTemperature(text, out Temperature temperature, out string fault))
            throw CommandFault.Input($"coldsim: temperature: {fault}");
        double t_C = temperature.Kelvins - Zero_K;
        if (t_C < Lowest_C - Rounding_K || t_C > Highest_C + Rounding_K)
        {
            throw CommandFault.Input(
                $"coldsim: temperature: {text} is {UnitStyle.Number(t_C, 1)} °C; it must be from -80 to 80 °C (-112 to 176 °F)");
        }

        return Math.Clamp(temperature.Kelvins, Lowest_K, Highest_K);
    }

    private static void WriteJson(Host host, double t_K, SaturatedPropane state)
    {
        host.Out.Flush();
        using (Utf8JsonWriter writer = new(host.Output, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            writer.WriteStartObject();
            writer.WriteNumber("temperature_c", Math.Round(t_K - Zero_K, 9));
            writer.WriteNumber("p_kpa", state.Pressure_Pa / 1e3);
            writer.WriteNumber("rho_liquid_kg_m3", state.Liquid_kg_m3);
            writer.WriteNumber("rho_vapour_kg_m3", state.Vapour_kg_m3);
            writer.WriteNumber("latent_heat_kj_kg", state.LatentHeat_J_kg / 1e3);
            writer.WriteEndObject();
        }

        host.Output.WriteByte((byte)'\n');
    }
}
