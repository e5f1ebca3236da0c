using System.Globalization;
using System.Text;

namespace ColdSim.Tests.Files.Weather;

/// <summary>A weather CSV that is generated while it is read: invented data, a row every few minutes.</summary>
internal static class GeneratedRows
{
    private static readonly DateTime First = new(1900, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>The CSV.</summary>
    /// <param name="rows">How many rows.</param>
    /// <param name="minutes">Between two of them.</param>
    /// <param name="at">Called with every row that is about to be made.</param>
    public static Stream Of(long rows, int minutes, Action<long>? at = null)
    {
        long row = 0;
        return new GeneratedText("time,air [°C],wind [m/s],dew point [°C],sun [W/m²]\n", () =>
        {
            StringBuilder text = new();
            for (int i = 0; i < 500 && row < rows; i++, row++)
            {
                at?.Invoke(row);
                Append(text, row, minutes);
            }

            return text.ToString();
        });
    }

    // A cold wave of ten days, days within it, a wind that is not always known, and a gap of three spacings now and then.
    private static void Append(StringBuilder text, long row, int minutes)
    {
        long minute = (row + row / 5000 * 2) * minutes;
        double day = minute / 1440.0, air = -4 - 9 * Math.Cos(day / 10 * 2 * Math.PI) - 5 * Math.Cos(day * 2 * Math.PI);
        string wind = row % 97 == 5 ? "" : (row % 7).ToString(CultureInfo.InvariantCulture);
        double sun = Math.Max(0, 200 * Math.Sin(day * 2 * Math.PI));
        text.Append(CultureInfo.InvariantCulture, $"{First.AddMinutes(minute):yyyy-MM-dd'T'HH:mm}Z,{air:0.0},{wind},{air - 3:0.0},{sun:0}\n");
    }
}
