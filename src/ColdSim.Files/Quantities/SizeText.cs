using System.Globalization;
using ColdSim.Model.Cylinder;

namespace ColdSim.Files.Quantities;

/// <summary>Reads the name of a common size of cylinder.</summary>
internal static class SizeText
{
    /// <summary>The size of a name; null for none.</summary>
    /// <param name="name">Such as "20 lb".</param>
    /// <param name="option">The option or argument that takes it, for an example.</param>
    /// <param name="fault">What was found and what is accepted.</param>
    public static StandardSize? Find(string name, string option, out string fault)
    {
        StandardSize? size = StandardSize.Find(name);
        fault = size is not null ? ""
            : CountedSize.Find(name) is { } counted
                ? string.Create(CultureInfo.InvariantCulture, $"'{Quote.Of(name)}' is {counted.Count} cylinders; give one size, such as ")
                    + $"{option} \"{Quote.Of(counted.Size)}\", or write a scenario with a [[cylinder]] for each"
                : $"'{Quote.Of(name)}' is not a common size; there are {string.Join(", ", StandardSize.All.Select(s => s.Name))}";
        return size;
    }
}
