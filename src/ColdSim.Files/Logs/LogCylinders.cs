using ColdSim.Files.Quantities;
using ColdSim.Model;

namespace ColdSim.Files.Logs;

/// <summary>The cylinders of a scenario by the names that a log uses for them.</summary>
internal static class LogCylinders
{
    /// <summary>The name that is written; a line of the log holds no control codes, so they are written as they are shown.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="place">The cylinder's place, from 0.</param>
    public static string NameOf(Rig rig, int place)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return VisibleText.Of(rig.Cylinders.Count == 1 ? rig.Cylinders[0].Name : rig.NameOf(place));
    }

    /// <summary>All names that are written, in the cylinders' order.</summary>
    public static IReadOnlyList<string> NamesOf(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return [.. Enumerable.Range(0, rig.Cylinders.Count).Select(i => NameOf(rig, i))];
    }

    /// <summary>The place of a cylinder by its name; null where none or more than one has it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="name">Its name, or its size where there is one of that size.</param>
    public static int? PlaceOf(Rig rig, string name)
    {
        ArgumentNullException.ThrowIfNull(rig);
        int[] called = [.. Enumerable.Range(0, rig.Cylinders.Count).Where(i => Same(NameOf(rig, i), name) || Same(rig.NameOf(i), name))];
        if (called.Length != 1)
            called = [.. Enumerable.Range(0, rig.Cylinders.Count).Where(i => Same(rig.Cylinders[i].Name, name))];

        // A cylinder by its plate was called in pounds before it was called in the plate's own units.
        if (called.Length == 0)
            called = [.. Enumerable.Range(0, rig.Cylinders.Count).Where(i => SameMass(rig.Cylinders[i].Name, name))];
        return called.Length == 1 ? called[0] : null;
    }

    /// <summary>What is accepted, in words.</summary>
    public static string Accepted(Rig rig) => $"accepted: the scenario's, {string.Join(", ", NamesOf(rig).Select(n => $"'{Quote.Of(n)}'"))}";

    private static bool SameMass(string one, string other)
        => SiText.Read(one, Dimension.Mass, out double one_kg) is null && SiText.Read(other, Dimension.Mass, out double other_kg) is null
            && Math.Abs(one_kg - other_kg) < 0.005 * one_kg;

    private static bool Same(string one, string other) => VisibleText.Of(one.Trim()).Equals(VisibleText.Of(other.Trim()), StringComparison.OrdinalIgnoreCase);
}
