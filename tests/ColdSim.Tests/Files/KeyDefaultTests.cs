using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using ColdSim.Files;
using ColdSim.Files.Scenarios;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Planning;
using UnitsNet;
using Xunit;

namespace ColdSim.Tests.Files;

/// <summary>A default that is declared as a value is the one that the reader takes.</summary>
public class KeyDefaultTests
{
    // The least of every table that a whole scenario needs for it; every table is there to be extended by a line.
    private const string Whole = """
        title = "Everything"
        [place]
        [weather]
        file = "w.csv"
        [run]
        [gas]
        [[cylinder]]
        size = "20 lb"
        [cylinder.surroundings]
        [cylinder.blanket]
        power = "50 W"
        [[cylinder]]
        size = "20 lb"
        [enclosure]
        kind = "tongue cover"
        [arrangement]
        [regulator]
        [furnace]
        input = "20,000 BTU/h"
        [thermostat]
        [people]
        [coach]
        length = "24 ft"
        [[coach.surface]]
        area = "17 m²"
        kind = "window"
        [[coach.surface]]
        area = "17 m²"
        kind = "floor"
        [[coach.slide_out]]
        seal_perimeter = "28 ft"
        [coach.skirting]
        area = "9 m²"
        [coach.covers]
        saves = "5 W/K"
        [coach.moisture]
        [[heater]]
        runs_on = "diesel"
        output = "2 kW"
        [[draw]]
        rate = "1,000 BTU/h"
        [battery]
        chemistry = "agm"
        capacity = "200 Ah"
        [solar]
        rated = "200 W"
        [[load]]
        draws = "2 A"
        [converter]
        [generator]
        rated = "2 kW"
        [[refrigerator]]
        [[water_heater]]
        draws = "07:00-07:10 4 L/min"
        [[on_demand_heater]]
        hours = "07:00-07:10"
        [[cooker]]
        kind = "stove"
        meals = "07:00-07:10"
        [[catalytic_heater]]
        hours = "07:00-07:10"
        [[wet_bay]]
        [[pipe]]
        length = "2 m"
        where = "inside"
        [[tank]]
        volume = "40 gal"
        where = "inside"
        [verdict]
        [fit]
        [chance]
        [[refill]]
        at = 2025-01-14T18:00:00
        cylinder = 1
        """;

    // What else must be written for a key to be accepted.
    private static readonly Dictionary<string, string> Beside = new()
    {
        ["weather.lapse"] = "station_elevation = \"1,000 m\"",
        ["arrangement.reserve_setting"] = "kind = \"changeover\"",
        ["arrangement.reserve_droop"] = "kind = \"changeover\"",
        ["arrangement.meeting_time"] = "kind = \"together\"",
        ["cylinder.requalify_years"] = "stamped = 2020-05-31",
        ["thermostat.day"] = "night = \"17 °C\"",
        ["heater.differential"] = "set_point = \"18 °C\"",
        ["catalytic_heater.differential"] = "set_point = \"18 °C\"",
        ["pipe.conductivity"] = "insulation = \"10 mm\"",
    };

    // A gas's parts are read together; the headings of a table of weather have no defaults that reach the scenario.
    private static readonly string[] LeftOut = ["gas.by_mass", "gas.by_liquid_volume", "weather.columns"];

    // Where an error's size comes from is another question than how large it is.
    private static readonly PropertyInfo? Source = typeof(ErrorSize).GetProperty(nameof(ErrorSize.Source));

    [Fact]
    public void A_key_written_with_its_default_changes_nothing()
        => Assert.All(
            from at in ScenarioKeys.All
            where !LeftOut.Contains(at.Name) && !at.Name.StartsWith("stop", StringComparison.Ordinal)
            from key in at.Section.Keys
            let value = Written(key)
            where value is not null
            select (at.Name, Key: key, Value: value),
            k =>
            {
                string beside = Beside.GetValueOrDefault($"{k.Name}.{k.Key.Name}", "");
                Scenario without = Read(With(k.Name, beside)), with = Read(With(k.Name, $"{beside}\n{k.Key.Name} = {k.Value}"));
                AssertSame(without with { Assumptions = [] }, with with { Assumptions = [] }, "", []);
            });

    // The default as the file would have it; null where it is none or words.
    private static string? Written(ScenarioKey key) => key switch
    {
        QuantityKey { DefaultSi: not null, Default.Unit: not "-" } => key.Example,
        NumberKey { Default.Si: not null } or WholeKey { Default.Si: not null } => key.Example,
        FlagKey { Default.Si: not null } => key.DefaultShown,
        ChoiceKey choice when choice.Words.Contains(key.DefaultShown) => $"\"{key.DefaultShown}\"",
        SpansKey or TimeKey when char.IsDigit(key.DefaultShown[0]) => $"\"{key.DefaultShown}\"",
        _ => null,
    };

    private static string With(string section, string lines)
    {
        string[] headers = [$"[{section}]", $"[[{section}]]"];
        List<string> text = [.. Whole.ReplaceLineEndings("\n").Split('\n')];

        // Cylinders in an enclosure have its surroundings for theirs.
        if (section.StartsWith("cylinder", StringComparison.Ordinal)) text.RemoveRange(text.IndexOf("[enclosure]"), 2);
        text.Insert(text.FindIndex(headers.Contains) + 1, lines);
        return string.Join('\n', text);
    }

    private static Scenario Read(string text)
    {
        ReadResult result = Fixtures.Read(text);
        Assert.Empty(result.Problems);
        return result.Scenario!;
    }

    // Every public property of ours, value by value; numbers as far as a text of six decimals holds them.
    private static void AssertSame(object? one, object? other, string path, HashSet<object> seen)
    {
        switch (one)
        {
            case double a when other is double b:
                Assert.True(a.Equals(b) || Math.Abs(a - b) <= 1e-6 * Math.Max(Math.Abs(a), 1e-6), $"{path}: {a} became {b}");
                return;
            case IQuantity a when other is IQuantity b:
                AssertSame(a.As(a.Unit), b.As(a.Unit), path, seen);
                return;
            case string or null:
                Assert.True(Equals(one, other), $"{path}: {one} became {other}");
                return;
            case IEnumerable items:
                object?[] these = [.. items.Cast<object?>()], those = [.. ((IEnumerable)other!).Cast<object?>()];
                Assert.True(these.Length == those.Length, $"{path}: {these.Length} became {those.Length}");
                for (int i = 0; i < these.Length; i++)
                    AssertSame(these[i], those[i], $"{path}[{i}]", seen);
                return;
        }
        Type type = one.GetType();
        if (type.IsEnum || type.Namespace?.StartsWith("ColdSim", StringComparison.Ordinal) != true)
        {
            Assert.True(Equals(one, other), $"{path}: {one} became {other}");
            return;
        }
        Assert.Equal(type, other?.GetType());
        if (!type.IsValueType && !seen.Add(new Reference(one)))
            return;
        foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0 && p != Source))
            AssertSame(property.GetValue(one), property.GetValue(other), $"{path}.{property.Name}", seen);
    }

    private sealed class Reference(object target)
    {
        public override bool Equals(object? obj) => obj is Reference other && ReferenceEquals(target, other.Target);

        public override int GetHashCode() => RuntimeHelpers.GetHashCode(target);

        private object Target => target;
    }
}
