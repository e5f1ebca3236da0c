using ColdSim.Model;
using ColdSim.Planning;

namespace ColdSim.Files.Logs;

/// <summary>Turns one entry into a measured value; used both for a line about to be written and for one read back.</summary>
internal static class MeasurementReader
{
    /// <summary>The measured value that an entry is, or everything that is wrong with it.</summary>
    /// <param name="entry">What somebody entered; its method is one of <see cref="MeasuredMethod.All"/>.</param>
    /// <param name="rig">Where it was measured.</param>
    /// <param name="line">Its line in the log.</param>
    public static (Measurement? Measurement, IReadOnlyList<EntryFault> Faults) Read(LogEntry entry, Rig rig, int line = 0)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(rig);
        MeasuredMethod method = MeasuredMethod.Of(entry.Method)
            ?? throw new ArgumentException($"'{entry.Method}' measures nothing beside contents.", nameof(entry));
        EntryFields fields = new(entry);
        int? place = Cylinder(entry, method, rig, fields);
        fields.CheckDetails();
        if (entry.Temperature.Length > 0)
            fields.Add(LogField.Temperature, $"'{Quote.Of(entry.Temperature)}'", $"accepted: nothing; a reading of {method.Name} needs no liquid temperature");
        double value = fields.Number(method.Dimension, method.Low, method.High);
        double? error = fields.Detail(LogMethods.Error, method.ErrorDimension, method.LeastError, method.MostError);
        if (fields.Faults.Count > 0)
            return (null, fields.Faults);
        return (
            new Measurement
            {
                Line = line,
                Time = entry.Time,
                Quantity = method.Quantity,
                Value = value,
                StandardError = error ?? Measurement.UsualError(method.Quantity),
                Cylinder = place,
                Rested = fields.Has(LogMethods.Rested),
                Note = entry.Note,
            },
            []);
    }

    private static int? Cylinder(LogEntry entry, MeasuredMethod method, Rig rig, EntryFields fields)
    {
        if (!Measurement.IsOfCylinder(method.Quantity))
        {
            if (entry.Cylinder.Length > 0)
                fields.Add(LogField.Cylinder, $"a cylinder called '{Quote.Of(entry.Cylinder)}'", $"accepted: nothing; {method.Name} is no cylinder's");
            return null;
        }

        int? place = LogCylinders.PlaceOf(rig, entry.Cylinder);
        if (place is null)
            fields.Add(LogField.Cylinder, $"a cylinder called '{Quote.Of(entry.Cylinder)}'", LogCylinders.Accepted(rig));
        return place;
    }
}
