using System.Collections;
using System.Reflection;
using ColdSim.Planning.Figures;
using Xunit;

namespace ColdSim.Tests.Planning.Figures;

public class WordTableTests
{
    public static TheoryData<string> Tables => [.. Declared().Select(t => $"{t.DeclaringType!.Name}.{t.Name}")];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_value_has_a_word_and_no_key_is_there_twice(string table)
    {
        PropertyInfo declared = Declared().Single(t => $"{t.DeclaringType!.Name}.{t.Name}" == table);
        Type set = declared.PropertyType.GetGenericArguments()[0];
        object words = declared.GetValue(null)!;
        PropertyInfo of = declared.PropertyType.GetProperties().Single(p => p.GetIndexParameters().Length == 1);
        Word[] each = [.. Enum.GetValues(set).Cast<object>().Select(v => (Word)of.GetValue(words, [v])!)];
        Assert.Equal(each.Length, each.Select(w => w.Key).Distinct().Count());
        Assert.Equal(each.Length, ((ICollection)declared.PropertyType.GetProperty("All")!.GetValue(words)!).Count);
    }

    private static IEnumerable<PropertyInfo> Declared() => typeof(Word).Assembly.GetTypes()
        .SelectMany(t => t.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
        .Where(p => p.PropertyType.IsGenericType && p.PropertyType.GetGenericTypeDefinition() == typeof(WordTable<>));
}
