using System.Globalization;
using System.Text;
using ColdSim.App.Screens.Pages;
using ColdSim.Files;
using ColdSim.Files.Logs;
using ColdSim.Files.Weather;
using ColdSim.Model;
using ColdSim.Planning.Logs;

namespace ColdSim.App.Screens.Readings;

/// <summary>The fields of the form, in their order.</summary>
internal enum FormField
{
    Cylinder,
    Method,
    Reading,
    Temperature,
    Tare,
    Filled,
    Rested,
    At,
    Note,
}

/// <summary>A reading while it is typed. Text is kept as it is.</summary>
internal sealed record EntryForm
{
    /// <summary>The most characters that a field takes.</summary>
    private const int Longest = 120;

    public FormField Field { get; init; } = FormField.Reading;

    public int Cylinder { get; init; }

    public int MethodAt { get; init; }

    public string Reading { get; init; } = "";

    public string Temperature { get; init; } = "";

    public string Tare { get; init; } = "";

    public string At { get; init; } = "";

    public string Note { get; init; } = "";

    public bool Filled { get; init; }

    /// <summary>Of a voltage: whether nothing was drawn or charged for hours.</summary>
    public bool Rested { get; init; }

    public string Method => LogMethods.All[MethodAt];

    /// <summary>An example in the method's own unit.</summary>
    public string Sample => Method switch
    {
        "weight" => "31.2 lb",
        "echo-time" => "230 us",
        "echo-percent" or "float" => "35 %",
        _ => MeasuredMethod.Of(Method)?.Example ?? "5.1 in",
    };

    /// <summary>The fields for a method and a rig.</summary>
    public IReadOnlyList<FormField> Fields(Rig rig) => MeasuredMethod.Of(Method) is { } measured
        ?
        [
            .. measured.IsOfCylinder && rig.Cylinders.Count > 1 ? [FormField.Cylinder] : Array.Empty<FormField>(), FormField.Method, FormField.Reading,
            .. measured.Details.Contains(LogMethods.Rested) ? [FormField.Rested] : Array.Empty<FormField>(), FormField.At, FormField.Note,
        ]
        : FieldsOfContents(rig);

    private IReadOnlyList<FormField> FieldsOfContents(Rig rig) =>
    [
        .. rig.Cylinders.Count > 1 ? [FormField.Cylinder] : Array.Empty<FormField>(), FormField.Method, FormField.Reading,
        LogMethods.ReadsLevel(Method) ? FormField.Temperature : FormField.Tare, FormField.Filled, FormField.At, FormField.Note,
    ];

    /// <summary>The text of a field; null for one whose value is chosen.</summary>
    public string? Text(FormField field) => field switch
    {
        FormField.Reading => Reading,
        FormField.Temperature => Temperature,
        FormField.Tare => Tare,
        FormField.At => At,
        FormField.Note => Note,
        _ => null,
    };

    public EntryForm Next(int direction, Rig rig)
    {
        IReadOnlyList<FormField> fields = Fields(rig);
        int at = Math.Max(0, fields.ToList().IndexOf(Field));
        return this with { Field = fields[(at + direction + fields.Count) % fields.Count] };
    }

    /// <summary>The form with the next choice in a field whose value is chosen.</summary>
    public EntryForm Chosen(int direction, Rig rig) => Field switch
    {
        FormField.Cylinder => this with { Cylinder = Wrapped(Cylinder + direction, rig.Cylinders.Count) },
        FormField.Method => this with { MethodAt = Wrapped(MethodAt + direction, LogMethods.All.Count) },
        FormField.Filled => this with { Filled = !Filled },
        FormField.Rested => this with { Rested = !Rested },
        _ => this,
    };

    public EntryForm Typed(Rune rune, Rig rig)
    {
        if (Text(Field) is not { } text)
            return rune.Value == ' ' ? Chosen(1, rig) : this;
        return Rune.IsControl(rune) || text.Length >= Longest ? this : With(text + rune);
    }

    public EntryForm WithoutLast() => Text(Field) is { Length: > 0 } text ? With(TextEdit.WithoutLast(text)) : this;

    /// <summary>The form after a reading was written: the same method, all else empty.</summary>
    public EntryForm Cleared() => this with { Field = FormField.Reading, Reading = "", At = "", Note = "", Filled = false, Rested = false };

    /// <summary>The line of the log, or what is wrong with it; the reading is null where it says nothing of contents.</summary>
    public (LogEntry? Entry, LogReading? Reading, IReadOnlyList<string> Faults) Read(Rig rig, DateTimeOffset now)
    {
        List<string> faults = [];
        DateTimeOffset time = now;
        if (At.Trim().Length > 0 && InstantText.TryRead(At.Trim(), now.Offset, out time) != InstantText.Outcome.Read)
            faults.Add($"read at: '{Quote.Of(At.Trim())}' is not a time; {InstantText.Accepted}");
        MeasuredMethod? measured = MeasuredMethod.Of(Method);
        LogEntry entry = new()
        {
            Time = time,
            Cylinder = measured is { IsOfCylinder: false } ? "" : LogCylinders.NameOf(rig, Cylinder),
            Method = Method,
            Reading = Reading.Trim(),
            Temperature = LogMethods.ReadsLevel(Method) ? Temperature.Trim() : "",
            Details =
            [
                .. Filled && measured is null ? [new LogDetail(LogMethods.Filled, "")] : Array.Empty<LogDetail>(),
                .. Rested && Method == "voltage" ? [new LogDetail(LogMethods.Rested, "")] : Array.Empty<LogDetail>(),
                .. Method == "weight" && Tare.Trim().Length > 0 ? [new LogDetail("tare", Tare.Trim())] : Array.Empty<LogDetail>(),
            ],
            Note = Note.Trim(),
        };
        if (measured is not null)
        {
            faults.AddRange(MeasurementReader.Read(entry, rig).Faults.Select(Words));
            return faults.Count == 0 ? (entry, null, []) : (null, null, faults);
        }

        (LogReading? reading, IReadOnlyList<EntryFault> found) = EntryReader.Read(entry, rig);
        faults.AddRange(found.Select(Words));
        return faults.Count == 0 ? (entry, reading, []) : (null, null, faults);
    }

    private static string Words(EntryFault fault)
    {
        string where = fault.Field switch
        {
            LogField.Reading => "reading: ",
            LogField.Temperature => "temperature: ",
            LogField.Details => $"{fault.Detail}: ",
            _ => "",
        };
        return string.Create(
            CultureInfo.InvariantCulture, $"{where}{fault.What}{(fault.Accepted is null ? "" : $"; {fault.Accepted}")}{(fault.Nearest is null ? "" : $"; did you mean '{fault.Nearest}'?")}");
    }

    private static int Wrapped(int at, int count) => (at % count + count) % count;

    private EntryForm With(string text) => Field switch
    {
        FormField.Reading => this with { Reading = text },
        FormField.Temperature => this with { Temperature = text },
        FormField.Tare => this with { Tare = text },
        FormField.At => this with { At = text },
        FormField.Note => this with { Note = text },
        _ => this,
    };
}
