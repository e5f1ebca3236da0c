using System.Text;
using ColdSim.Files.Scenarios.Keys;
using ColdSim.Files.Toml;

namespace ColdSim.Files.Scenarios;

/// <summary>What a person sets once for every forecast.</summary>
/// <param name="Contact">How a service can reach the person; null where it is not given.</param>
/// <param name="From">The service to ask; null where it is not given.</param>
internal sealed record ForecastSettings(string? Contact, string? From);

/// <summary>The file of a person's settings, in the folder of the person's settings.</summary>
internal static class SettingsFile
{
    private const int LongestContact = 100;

    private static readonly TextKey Contact = new(
        "contact", KeyDefault.None, "how a weather service can reach you: an e-mail address or a web page")
    {
        Such = "you@example.org",
    };

    private static readonly TextKey From = new("from", KeyDefault.Of("open-meteo"), "the weather service to ask") { Such = "met-norway" };

    private static readonly ScenarioSection Forecast = new(
        "forecast", TableForm.One, "what 'coldsim forecast' sends and asks", [Contact, From]);

    private static readonly ScenarioSection Root = new("", TableForm.One, "the settings", [], Forecast);

    /// <summary>What a contact may be, in words.</summary>
    public const string ContactAccepted
        = "an e-mail address or a web page, such as you@example.org, of at most 100 letters, digits and signs without brackets";

    /// <summary>Whether a text may be sent as a contact: it goes into a line of HTTP, in which a bracket would end it.</summary>
    public static bool IsContact(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length is > 2 and <= LongestContact && text.All(c => c is > ' ' and < (char)127 and not ('(' or ')' or '\\'))
            && text.IndexOfAny(['@', '.']) >= 0;
    }

    /// <summary>Reads the file.</summary>
    /// <param name="path">The file; it exists.</param>
    /// <param name="open">Opens it.</param>
    /// <returns>The settings, or everything that is wrong.</returns>
    public static (ForecastSettings? Settings, IReadOnlyList<FileProblem> Problems) Read(string path, Func<string, Stream> open)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(open);
        try
        {
            using Stream file = open(path);
            return ReadText(TomlFile.Read(file), path);
        }
        catch (DecoderFallbackException)
        {
            return (null, [new FileProblem(path, 1, 1, "not a text in UTF-8")]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return (null, [new FileProblem(path, 1, 1, "the settings cannot be opened: " + FileProblem.WhyUnreadable(e))]);
        }
    }

    /// <summary>Reads its text.</summary>
    /// <param name="text">The text in TOML.</param>
    /// <param name="name">Its name in messages.</param>
    public static (ForecastSettings? Settings, IReadOnlyList<FileProblem> Problems) ReadText(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        TomlTree tree = TomlTree.Read(text, name);
        Reading reading = new(name, tree.HasSyntaxErrors);
        reading.Problems.AddRange(tree.Problems);
        SectionReader root = new(reading, tree.Root, Root);
        SectionReader forecast = root.Section(Forecast);
        string? contact = forecast.Get(Contact)?.Trim(), from = forecast.Get(From)?.Trim();
        if (contact is not null && !IsContact(contact))
            forecast.Report(Contact, $"'contact' is \"{Quote.Of(contact)}\"", "accepted: " + ContactAccepted);
        forecast.Finish();
        root.Finish();
        return (reading.Problems.Count == 0 ? new ForecastSettings(contact, from) : null, FileProblem.InOrder(reading.Problems, name));
    }
}
