using System.CommandLine;
using System.CommandLine.Completions;
using System.Globalization;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Files.Weather;
using ColdSim.Model.Cylinder;
using ColdSim.Planning;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Commands;

/// <summary>Options that several commands have, and the makings of options.</summary>
internal static class CommonOptions
{
    private const int MostNights = 400;

    public static Argument<string> File(string description) => new("FILE") { Description = description };

    public static Option<string> Units()
        => Choice("--units", "Units to print: us (°F, lb, psi, BTU) or si (°C, kg, mbar, kW).", ["us", "si"], "us");

    public static Option<bool> Json() => new("--json") { Description = "Print one JSON document, in SI units, and nothing else." };

    public static Option<bool> FailIfShort() => new("--fail-if-short")
    {
        Description = "End with exit code 1 if any night does not hold.",
    };

    /// <summary>Lets a file be replaced that this program did not write; never one that is read.</summary>
    public static Option<bool> Force() => new("--force") { Description = "Replace an existing file that coldsim did not write; never one that is read." };

    /// <summary>The weather to run, instead of the scenario's.</summary>
    public static Option<string?> Weather() => new("--weather")
    {
        HelpName = "FILE",
        Description = "Weather file of any layout that coldsim reads, instead of the scenario's weather.",
    };

    /// <summary>The nights to run, instead of the scenario's.</summary>
    public static Option<double?> Nights() => Number("--nights", "N", "Nights to run, instead of the scenario's.", 1, MostNights, whole: true);

    /// <summary>
    /// A time given as <c>--at</c>, by the scenario's clock where it has no offset; a clock time alone, such as 04:00, is the first one after the run starts.
    /// </summary>
    /// <param name="text">As it was given.</param>
    /// <param name="scenario">Whose clock holds.</param>
    /// <param name="command">The command whose help says more.</param>
    /// <exception cref="CommandFault">Not a time.</exception>
    public static DateTimeOffset At(string text, Scenario scenario, string command)
        => InstantOf(text, scenario) ?? throw CommandFault.Input($"coldsim: --at: {NoTime(text)}", $"See 'coldsim {command} --help'.");

    /// <summary>The same; null where a text is no time.</summary>
    /// <param name="text">As it was given.</param>
    /// <param name="scenario">Whose clock holds.</param>
    public static DateTimeOffset? InstantOf(string text, Scenario scenario)
        => ClockTime(text) is { } clock ? Coming(clock, scenario.Start)
            : InstantText.TryRead(text, scenario.Start.Offset, out DateTimeOffset time) == InstantText.Outcome.Read ? time.ToOffset(scenario.Start.Offset)
            : null;

    /// <summary>What is said of a text that is no time.</summary>
    public static string NoTime(string text) => $"'{Quote.Of(text)}' is not a time; {InstantText.Accepted}, or a clock time such as 04:00";

    /// <summary>A clock time alone, such as 04:00; null where a text is none.</summary>
    public static TimeOnly? ClockTime(string text)
        => TimeOnly.TryParseExact(text.Trim(), ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly clock) ? clock : null;

    /// <summary>The first time at or after <paramref name="from"/> at which its clock shows <paramref name="clock"/>.</summary>
    public static DateTimeOffset Coming(TimeOnly clock, DateTimeOffset from)
    {
        DateTimeOffset sameDay = new(from.Date + clock.ToTimeSpan(), from.Offset);
        return sameDay < from ? sameDay.AddDays(1) : sameDay;
    }

    /// <summary>An answer at times given as <c>--at</c>; one that the run does not reach is the person's fault.</summary>
    /// <param name="scenario">What is run.</param>
    /// <param name="answer">Finds the answer.</param>
    /// <typeparam name="T">The answer.</typeparam>
    /// <exception cref="CommandFault">The run does not reach a time.</exception>
    public static T WithinRun<T>(Scenario scenario, Func<T> answer)
    {
        try
        {
            return answer();
        }
        catch (TimeOutsideRunException e)
        {
            throw CommandFault.Input($"coldsim: --at: {ClockText.Start(e.Time)} is outside the run, which starts {ClockText.Start(scenario.Start)}");
        }
    }

    /// <summary>A common size of cylinder by its name, or what is wrong with the name.</summary>
    public static StandardSize? Size(string name, string option, out string fault)
    {
        StandardSize? size = SizeText.Find(name, option, out string what);
        fault = size is null ? $"{option}: {what}" : "";
        return size;
    }

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
                    r.AddError($"{name} takes {string.Join(" or ", words)}, not '{Quote.Of(word)}'");
                return word;
            },
        };
        option.CompletionSources.Add(words);
        return option;
    }

    /// <summary>Lets shells offer words for an option's value, which may be another.</summary>
    public static Option<T> Offering<T>(this Option<T> option, params IEnumerable<string> words)
    {
        option.CompletionSources.Add([.. words]);
        return option;
    }

    /// <summary>Lets shells offer the common sizes of cylinders.</summary>
    public static Option<T> OfferingSizes<T>(this Option<T> option)
    {
        option.CompletionSources.Add(Sizes);
        return option;
    }

    /// <summary>The common sizes of cylinders, for shells to offer.</summary>
    public static IEnumerable<CompletionItem> Sizes(CompletionContext context) => StandardSize.All.Select(s => new CompletionItem(s.Name));

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
                CultureInfo.InvariantCulture,
                $"{name} takes a {(whole ? "whole " : "")}number from {min} to {max}, not '{Quote.Of(word)}'{(!NumberText.TryRead(word, out _, out _, out string fault) && NumberText.IsDecimalComma(fault) ? ": " + fault : "")}"));
            return null;
        },
    };

    /// <summary>An option that takes a quantity with its unit, read later so that all faults are reported together.</summary>
    public static Option<string?> Quantity(string name, string helpName, string description, bool required = false) => new(name)
    {
        Description = description,
        HelpName = helpName,
        Required = required,
    };
}
