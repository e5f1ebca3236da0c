using ColdSim.Files.Quantities;
using ColdSim.Planning;

namespace ColdSim.Files.Logs;

/// <summary>How a value other than the contents of a cylinder is written into the log.</summary>
/// <param name="Name">The method, and the option of <c>coldsim log add</c>.</param>
/// <param name="Quantity">What is measured.</param>
/// <param name="Dimension">What its reading must be.</param>
/// <param name="Low">The least that is accepted.</param>
/// <param name="High">The most that is accepted.</param>
/// <param name="ErrorDimension">What its standard error must be.</param>
/// <param name="LeastError">The least standard error that is accepted.</param>
/// <param name="MostError">The greatest standard error that is accepted.</param>
/// <param name="Example">A reading as somebody would write it.</param>
internal sealed record MeasuredMethod(
    string Name, MeasuredQuantity Quantity, Dimension Dimension, string Low, string High, Dimension ErrorDimension, string LeastError, string MostError,
    string Example)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<MeasuredMethod> All { get; } =
    [
        new("pressure", MeasuredQuantity.Pressure, Dimension.Pressure, "0 psi", "400 psi", Dimension.Pressure, "0.01 psi", "50 psi", "62 psi"),
        Temperature("liquid", MeasuredQuantity.Liquid, "12 °F"),
        Temperature("wall", MeasuredQuantity.Wall, "14 °F"),
        Temperature("inside", MeasuredQuantity.Inside, "61 °F"),
        new("voltage", MeasuredQuantity.Voltage, Dimension.Voltage, "6 V", "17 V", Dimension.Voltage, "1 mV", "2 V", "12.4 V"),
    ];

    /// <summary>Whether it is measured at a cylinder.</summary>
    public bool IsOfCylinder => Measurement.IsOfCylinder(Quantity);

    /// <summary>The details that a line may have.</summary>
    public IReadOnlyList<string> Details => Quantity == MeasuredQuantity.Voltage ? [LogMethods.Error, LogMethods.Rested] : [LogMethods.Error];

    /// <summary>The method of a name; null where it reads contents or is unknown.</summary>
    /// <param name="name">Its name.</param>
    public static MeasuredMethod? Of(string name) => All.FirstOrDefault(m => m.Name == name);

    private static MeasuredMethod Temperature(string name, MeasuredQuantity quantity, string example)
        => new(name, quantity, Dimension.Temperature, "-60 °C", "55 °C", Dimension.TemperatureDifference, "0.01 K", "30 K", example);
}
