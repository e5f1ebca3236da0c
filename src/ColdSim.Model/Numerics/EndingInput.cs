namespace ColdSim.Model.Numerics;

/// <summary>An input that is held for the first part of a step and then ends, as a cubic over the whole step that does the same.</summary>
/// <remarks>
/// The cubic has the input's first four moments, so that what it brings in all is exact, and what becomes of it by the step's end is off by the fourth
/// power of the step over the time constant, of which there are few parts in ten thousand of a small input. Within the step it is only near. A method of
/// fifth order integrates it exactly, where a jump within the step would leave it one of first order.
/// </remarks>
internal readonly struct EndingInput
{
    // By the shifted Legendre polynomials 1, 2x − 1, 6x² − 6x + 1 and 20x³ − 30x² + 12x − 1.
    private readonly double _constant, _first, _second, _third;

    /// <summary>An input of 1 that ends.</summary>
    /// <param name="part">After which part of the step, 0 to 1.</param>
    public EndingInput(double part)
    {
        double square = part * part, cube = square * part;
        double m1 = square - part, m2 = 2 * cube - 3 * square + part, m3 = 5 * square * square - 10 * cube + 6 * square - part;
        _constant = part - 3 * m1 + 5 * m2 - 7 * m3;
        _first = 6 * m1 - 30 * m2 + 84 * m3;
        _second = 30 * m2 - 210 * m3;
        _third = 140 * m3;
    }

    /// <summary>Its value after a part of the step.</summary>
    public double At(double x) => _constant + x * (_first + x * (_second + x * _third));
}
