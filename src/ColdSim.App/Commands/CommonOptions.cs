using System.CommandLine;
using System.Globalization;
using ColdSim.App.Text;

namespace ColdSim.App.Commands;

/// <summary>Options that several commands have, and the makings of options.</summary>
internal static class CommonOptions
{
    public static Argument<string> File(string description) => new("FILE") { Description = description };

    public static Option<string> Units()
        => Choice("--units", "Units to print: us (°F, lb, psi, BTU) or si (°C, kg, kPa, kW).", ["us", "si"], "us");

    public static Option<bool> Json() => new("--json") { Description = "Print one JSON document, in SI units, and nothing else." };

    public static Option<bool> FailIfShort() => new("--fail-if-short")
    {
        Description = "End with exit code 1 if any night runs short, flat or dry.",
    };

    public static UnitStyle UnitStyle(this ParseResult parsed, Option<string> units)
        => parsed.GetValue(units) == "si" ? Text.UnitStyle.Si : Text.UnitStyle.Us;

    /// <summary>An option that takes one of a few words.</summary>
    public static Option<string> Choice(string name, string description, string[] words, string unlessGiven)
    {
        Option<string> option = new(name)
        {
            Description = description,
            HelpName = string.Join('|', words),
            DefaultValueFactory = _ => unlessGiven,
            CustomParser = r =>
            {
                string word = r.Tokens[0].Value;
                if (!words.Contains(word, StringComparer.Ordinal))
                    r.AddError($"{name} takes {string.Join(" or ", words)}, not '{word}'");
                return word;
            },
        };
        option.CompletionSources.Add(words);
        return option;
    }

    /// <summary>An option that takes a number within limits.</summary>
    public static Option<double?> Number(string name, string helpName, string description, double min, double max, bool whole) => new(name)
    {
        Description = description,
        HelpName = helpName,
        CustomParser = r =>
        {
            string word = r.Tokens[0].Value;
            bool read = double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double value);
            if (read && value >= min && value <= max && (!whole || Math.Floor(value) == value))
                return value;
            r.AddError(string.Create(
                CultureInfo.InvariantCulture, $"{name} takes a {(whole ? "whole " : "")}number from {min} to {max}, not '{word}'"));
            return null;
        },
    };

    /// <summary>An option that takes a quantity with its unit, read later so that all faults are told together.</summary>
    public static Option<string?> Quantity(string name, string helpName, string description, bool required = false) => new(name)
    {
        Description = description,
        HelpName = helpName,
        Required = required,
    };
}
