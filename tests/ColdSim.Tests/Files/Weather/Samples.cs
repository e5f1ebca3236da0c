using System.Globalization;
using System.Text;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Weather;
using Xunit;

namespace ColdSim.Tests.Files.Weather;

/// <summary>Small weather files: invented data in the publisher's documented layout.</summary>
internal static class Samples
{
    /// <summary>Invented data in the publisher's documented layout: a day and a half, the year changing with the month.</summary>
    public static string Epw { get; } = EpwOf([(1990, 1, 31), (1984, 2, 1)]);

    /// <summary>Invented data in the publisher's documented layout.</summary>
    public static string Tmy3 { get; } = Tmy3Of([("12/31/1991", 1), ("01/01/1980", 2)]);

    /// <summary>Invented data in the publisher's documented layout, version 2.</summary>
    public const string LcdMetric = """
        STATION,DATE,LATITUDE,LONGITUDE,ELEVATION,NAME,REPORT_TYPE,SOURCE,HourlyDewPointTemperature,HourlyDryBulbTemperature,HourlyRelativeHumidity,HourlySkyConditions,HourlySeaLevelPressure,HourlyStationPressure,HourlyWindDirection,HourlyWindSpeed,Sunrise,Sunset,REM
        USW00099999,2031-01-09T23:54:00,40.0,-105.2,1600.0,"NOWHERE FIELD, XX US",FM-15,335,-15.0,-10.0,67,FEW:02 12 OVC:08 20,1020.1,840.0,010,3.1,,,
        USW00099999,2031-01-10T00:00:00,40.0,-105.2,1600.0,"NOWHERE FIELD, XX US",FM-12,335,-15.0,-10.2,67,,1020.1,840.1,010,3.0,,,"SYN 7, ""as sent"" so"
        USW00099999,2031-01-10T00:54:00,40.0,-105.2,1600.0,"NOWHERE FIELD, XX US",FM-15,335,-15.1,-11.0,66,CLR:00,1020.3,840.2,,0.0,,,
        USW00099999,2031-01-10T01:37:00,40.0,-105.2,1600.0,"NOWHERE FIELD, XX US",FM-16,335,-15.1,-11.4,66,VV:09 1,1020.3,840.2,,0.5,,,
        USW00099999,2031-01-10T01:54:00,40.0,-105.2,1600.0,"NOWHERE FIELD, XX US",FM-15,335,-15.2,-12.0s,66,CLR:00,1020.3,840.3,VRB,1.5,,,
        USW00099999,2031-01-10T02:54:00,40.0,-105.2,1600.0,"NOWHERE FIELD, XX US",FM-15,335,-16.0,-13.0,66,CLR:00,1020.3,840.3,VRB,1.5,,,
        USW00099999,2031-01-10T23:59:00,40.0,-105.2,1600.0,"NOWHERE FIELD, XX US",SOD  ,335,,,,,,,,,0720,1656,
        """;

    /// <summary>Invented data in the publisher's documented layout, version 1.</summary>
    public const string LcdUs = """
        "STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","REPORT_TYPE","SOURCE","HourlyDewPointTemperature","HourlyDryBulbTemperature","HourlyRelativeHumidity","HourlyStationPressure","HourlyWindSpeed","REM"
        "99999999999","2021-01-10T00:54:00","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-15","7","5","14","67","24.80","10","MET09501/10/21 00:54:02 METAR KXXX 100754Z AUTO 01010KT"
        "99999999999","2021-01-10T01:54:00","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-15","7","5","*","67","24.80","10","MET09501/10/21 01:54:02 METAR KXXX 100854Z AUTO 01010KT"
        "99999999999","2021-01-10T02:54:00","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-15","7","4","12","67","24.80","10","MET09501/10/21 02:54:02 METAR KXXX 100954Z AUTO 01010KT"
        """;

    /// <summary>Invented data in the publisher's documented layout, version 1.1 with fewer columns.</summary>
    public const string Ghcnh = """
        STATION|Station_name|DATE|Year|Month|Day|Hour|Minute|LATITUDE|LONGITUDE|ELEVATION|temperature|temperature_Quality_Code|temperature_Report_Type|temperature_Source_Code|dew_point_temperature|dew_point_temperature_Quality_Code|dew_point_temperature_Source_Code|station_level_pressure|station_level_pressure_Quality_Code|station_level_pressure_Source_Code|wind_speed|wind_speed_Quality_Code|wind_speed_Source_Code|sky_cover_summation_1|sky_cover_summation_2|REM
        XXI0000TEST|NOWHERE "FIELD|2031-01-10T06:53:00|2031|01|10|06|53|40.0|-105.2|1600.0|-10.0||FM15|335|-15.0||335|840.0||335|3.1||335|FEW:02|BKN:06|a "remark
        XXI0000TEST|NOWHERE "FIELD|2031-01-10T07:00:00|2031|01|10|07|00|40.0|-105.2|1600.0|-10.4|5|AUTO|220|-15.0||335|840.0||335|3.1||335|||
        XXI0000TEST|NOWHERE "FIELD|2031-01-10T07:53:00|2031|01|10|07|53|40.0|-105.2|1600.0|-11.0|1|FM15|335|-15.0||335|840.0||335|99.0|L|335|CLR:00||
        XXI0000TEST|NOWHERE "FIELD|2031-01-10T08:53:00|2031|01|10|08|53|40.0|-105.2|1600.0|-44.0|s|FM15|335|-15.0||335|840.0||335|2.1||335|||
        XXI0000TEST|NOWHERE "FIELD|2031-01-10T09:53:00|2031|01|10|09|53|40.0|-105.2|1600.0|-13.0||FM15|335|-15.0||335|840.0||335|2.1||335|CLR:00||
        """;

    /// <summary>Invented data in the publisher's documented layout.</summary>
    public const string OpenMeteo = """
        latitude,longitude,elevation,utc_offset_seconds,timezone,timezone_abbreviation
        40.0,-105.2,2400.0,-25200,America/Nowhere,GMT-7

        time,temperature_2m (°C),relative_humidity_2m (%),wind_speed_10m (km/h),surface_pressure (hPa),cloud_cover (%),shortwave_radiation (W/m²)
        2031-01-10T06:00,-14.0,80,3.6,760.0,25,0.0
        2031-01-10T07:00,-13.0,80,7.2,760.0,NaN,0.0
        2031-01-10T08:00,-12.0,80,10.8,760.0,75,100.0
        2031-01-10T09:00,-10.0,80,10.8,760.0,100,300.0

        time,temperature_2m_max (°C)
        2031-01-10,-8.0
        """;

    /// <summary>Invented data in the publisher's documented layout.</summary>
    public const string Meteostat = """
        time,temp,dwpt,rhum,prcp,snow,wdir,wspd,wpgt,pres,tsun,coco
        2031-01-10 00:00:00,-10.0,-15.0,67,0.0,,10,3.6,,1020.1,,3
        2031-01-10 01:00:00,-11.0,,67,0.0,,10,,,1020.1,,3
        2031-01-10 02:00:00,-12.0,-16.0,67,0.0,,10,10.8,,1020.1,,3
        """;

    /// <summary>Invented data in the publisher's documented layout, of older bulk files.</summary>
    public const string MeteostatBulk = "2031-01-10,0,-10.0,-15.0,67,0.0,,10,3.6,,1020.1,,3\n2031-01-10,1,-11.0,-15.0,67,0.0,,10,3.6,,1020.1,,3\n";

    /// <summary>Invented data in the publisher's documented layout, with a source beside each value.</summary>
    public const string MeteostatYear = "year,month,day,hour,temp,temp_source,rhum,rhum_source,wspd,wspd_source\n2031,1,10,23,-10.0,x,67,x,3.6,x\n2031,1,11,0,-11.0,x,67,x,3.6,x\n";

    /// <summary>Invented data in the publisher's documented layout.</summary>
    public const string Forecast = """
        {
          "type": "Feature",
          "geometry": { "type": "Polygon", "coordinates": [[[-105.3, 39.9], [-105.1, 39.9], [-105.1, 40.1], [-105.3, 40.1], [-105.3, 39.9]]] },
          "properties": {
            "units": "us",
            "elevation": { "unitCode": "wmoUnit:m", "value": 2400.5 },
            "periods": [
              { "number": 1, "startTime": "2031-03-09T00:00:00-07:00", "endTime": "2031-03-09T01:00:00-07:00", "temperature": 14, "temperatureUnit": "F",
                "dewpoint": { "unitCode": "wmoUnit:degC", "value": -15 }, "relativeHumidity": { "unitCode": "wmoUnit:percent", "value": 67 }, "windSpeed": "5 mph", "windDirection": "N" },
              { "number": 2, "startTime": "2031-03-09T01:00:00-07:00", "endTime": "2031-03-09T03:00:00-06:00", "temperature": 12, "temperatureUnit": "F",
                "relativeHumidity": { "unitCode": "wmoUnit:percent", "value": null }, "windSpeed": "10 to 20 mph", "windDirection": "" },
              { "number": 3, "startTime": "2031-03-09T03:00:00-06:00", "temperature": { "unitCode": "wmoUnit:degC", "value": -12 },
                "windSpeed": { "unitCode": "wmoUnit:km_h-1", "value": 36 } }
            ]
          }
        }
        """;

    public static string EpwOf((int Year, int Month, int Day)[] days, int perHour = 1)
    {
        StringBuilder text = new();
        text.Append("LOCATION,Nowhere,XX,USA,Invented,999999,40.00,-105.20,-7.0,1600.0\n");
        text.Append("DESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVING,No,0,0,0\n");
        text.Append("COMMENTS 1,invented data in the publisher's documented layout, a 5\" snow\nCOMMENTS 2,\n");
        (_, int month, int day) = days[^1];
        text.Append(CultureInfo.InvariantCulture, $"DATA PERIODS,1,{perHour},Data,Sunday, 1/31,{month}/{day}\n");
        foreach ((int y, int m, int d) in days)
        {
            for (int hour = 1; hour <= 24; hour++)
            {
                int sun = hour is >= 9 and <= 16 ? 200 : 0;
                text.Append(CultureInfo.InvariantCulture, $"{y},{m},{d},{hour},60,?9,{-10 - hour * 0.1:0.0},-15.0,67,84000,0,0,300,{sun},0,0,0,0,0,0,10,3.1,5,5,16,77777,9,999999999,999,0.1,0,88,0.2,0,0\n");
            }
        }
        return text.ToString();
    }

    public static string Tmy3Of((string Date, int Cold)[] days)
    {
        StringBuilder text = new("999999,\"NOWHERE FIELD\",XX,-7.0,40.000,-105.200,1600\r\n");
        text.Append("Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,TotCld (tenths),Dry-bulb (C),Dry-bulb source,Dew-point (C),RHum (%),Pressure (mbar),Wspd (m/s)\r\n");
        foreach ((string date, int cold) in days)
        {
            for (int hour = 1; hour <= 24; hour++)
                text.Append(CultureInfo.InvariantCulture, $"{date},{hour:00}:00,0,{(hour == 12 ? 400 : 0)},1,{(hour == 5 ? -9900 : 4)},{-10 - cold}.5,A,-20.0,67,840,3.1\r\n");
        }
        return text.ToString();
    }

    public static WeatherResult Read(string text, WeatherRequest? request = null) => Read(Encoding.UTF8.GetBytes(text), request);

    public static WeatherResult Read(byte[] bytes, WeatherRequest? request = null)
    {
        using MemoryStream stream = new(bytes);
        return WeatherFile.Read(stream, "w", request ?? new());
    }

    public static WeatherResult Good(string text, WeatherRequest? request = null)
    {
        WeatherResult result = Read(text, request);
        Assert.Equal([], result.Problems.Select(p => p.ToString()));
        return result;
    }

    public static double Celsius(this WeatherRow row) => Math.Round(row.Air_K - 273.15, 6);
}
