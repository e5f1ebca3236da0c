using System.CommandLine;
using ColdSim.Files;

namespace ColdSim.App.Commands;

/// <summary>Reads options that are quantities with units; all faults are reported together.</summary>
/// <param name="parsed">The command line.</param>
internal abstract class OptionInput(ParseResult parsed)
{
    /// <summary>Reads a text into a quantity, or says what is wrong with it.</summary>
    protected delegate bool Reader<T>(string text, out T value, out string fault);

    protected ParseResult Parsed => parsed;

    /// <summary>What is wrong, in the order of reading.</summary>
    protected List<string> Faults { get; } = [];

    /// <summary>What was found wrong.</summary>
    public IReadOnlyList<string> Found => Faults;

    /// <summary>How far outside its limits a value may be, for the rounding of its unit.</summary>
    protected virtual double Rounding => 0;

    protected double? Read<T>(Option<string?> option, Reader<T> read, Func<T, double> si, double min, double max, string range)
        => Read(option, Text(option), read, si, min, max, range);

    protected double? Read<T>(Option option, string? text, Reader<T> read, Func<T, double> si, double min, double max, string range)
    {
        if (text is null)
            return null;
        if (!read(text, out T value, out string fault))
        {
            Faults.Add($"{option.Name}: {fault}");
            return null;
        }

        double number = si(value);
        if (number >= min - Rounding && number <= max + Rounding)
            return number;
        Faults.Add($"{option.Name}: {OutOfRange(text, range)}");
        return null;
    }

    /// <summary>What is said of a value outside its limits.</summary>
    protected virtual string OutOfRange(string text, string range) => $"'{Quote.Of(text)}' must be {range}";

    /// <summary>Whether an option was given, not its default.</summary>
    protected bool IsGiven(Option option) => parsed.GetResult(option) is { Implicit: false };

    /// <summary>What was given; null also for an option that this command does not have.</summary>
    protected string? Text(Option<string?> option) => parsed.GetResult(option) is null ? null : parsed.GetValue(option);
}
