namespace ColdSim.Tests.Files.Weather;

/// <summary>Small tables: invented data, built by hand in the publishers' documented layouts.</summary>
internal static class PublisherSamples
{
    /// <summary>Invented data in the publisher's documented layout, with the station above the headings; one row ends after its date.</summary>
    public const string EnvironmentCanada = """
        "Station Name","NOWHERE LAKE"
        "Province","ONTARIO"
        "Latitude","49.50"
        "Longitude","-82.25"
        "Elevation","244.40"
        "Climate Identifier","9999999"
        "WMO Identifier","99999"
        "TC Identifier","XXX"
        "All times are specified in Local Standard Time (LST). Add 1 hour to adjust for Daylight Saving Time where and when it is observed."

        "Legend"
        "E","Estimated"
        "M","Missing"
        "NA","Not Available"

        "Date/Time","Year","Month","Day","Time","Temp (°C)","Temp Flag","Dew Point Temp (°C)","Dew Point Temp Flag","Rel Hum (%)","Rel Hum Flag","Wind Dir (10s deg)","Wind Dir Flag","Wind Spd (km/h)","Wind Spd Flag","Visibility (km)","Visibility Flag","Stn Press (kPa)","Stn Press Flag","Hmdx","Hmdx Flag","Wind Chill","Wind Chill Flag","Weather"
        "2031-01-10 00:00","2031","01","10","00:00","-21.5","","-24.5","","77","","32","","18","","16.1","","98.45","","","","-31","","Clear"
        "2031-01-10 01:00","2031","01","10","01:00","-22.4","","-25.1","","78","","31","","9","","16.1","","98.50","","","","-29","","NA"
        "2031-01-10 02:00","2031","01","10","02:00"
        "2031-01-10 03:00","2031","01","10","03:00","-24.0","E","","M","80","","","M","","M","","","98.60","","","","","","NA"
        "2031-01-10 04:00","2031","01","10","04:00","","M","","M","","","","M","","M","","","","","","","","","NA"
        "2031-01-10 05:00","2031","01","10","05:00","-23.0","","-26.0","","76","","30","","36","","16.1","","98.70","","","","-38","","Snow"
        """;

    /// <summary>Invented data in the publisher's documented layout, with the station in columns of its own.</summary>
    public const string EnvironmentCanadaColumns = """
        "Longitude (x)","Latitude (y)","Station Name","Climate ID","Date/Time (LST)","Year","Month","Day","Time (LST)","Temp (°C)","Temp Flag","Dew Point Temp (°C)","Dew Point Temp Flag","Rel Hum (%)","Rel Hum Flag","Precip. Amount (mm)","Precip. Amount Flag","Wind Dir (10s deg)","Wind Dir Flag","Wind Spd (km/h)","Wind Spd Flag","Stn Press (kPa)","Stn Press Flag","Weather"
        "-82.25","49.50","NOWHERE LAKE","9999999","2031-01-10 00:00","2031","01","10","00:00","-21.5","","-24.5","","77","","","M","32","","18","","98.45","","NA"
        "-82.25","49.50","NOWHERE LAKE","9999999","2031-01-10 01:00","2031","01","10","01:00","-22.4","","-25.1","","78","","","M","31","","9","","98.50","","NA"
        """;

    /// <summary>Invented data in the publisher's documented layout, half hours; its dates are in UTC and the place's own zone is beside it.</summary>
    public const string Nsrdb = """
        Source,Location ID,City,State,Country,Latitude,Longitude,Time Zone,Elevation,Local Time Zone,Dew Point Units,GHI Units,Temperature Units,Pressure Units,Relative Humidity Units,Wind Direction Units,Wind Speed Units,Version
        NSRDB,999999,-,-,-,40.53,-108.54,0,2168,-7,c,w/m2,c,mbar,%,Degrees,m/s,9.9.9
        Year,Month,Day,Hour,Minute,Temperature,Dew Point,GHI,Relative Humidity,Pressure,Wind Direction,Wind Speed
        2031,1,10,15,0,-14.2,-16.0,0,85,782,190,1.5
        2031,1,10,15,30,-15.1,-16.8,20,86,782,185,0.9
        2031,1,10,16,0,-13.0,-15.5,110,82,783,180,2.1
        """;

    /// <summary>Invented data in the publisher's documented layout of a series on a panel's plane, its explanations below the table.</summary>
    public const string PvgisPanel =
        "Latitude (decimal degrees):\t45.000\nLongitude (decimal degrees):\t8.000\nElevation (m):\t250\nRadiation database:\tPVGIS-SARAH\n\n\nSlope: 30 deg. \nAzimuth: 0 deg. \n"
        + "time,Gb(i),Gd(i),Gr(i),H_sun,T2m,WS10m,Int\n20310110:0510,0.0,0.0,0.0,0.0,-3.06,1.49,0.0\n20310110:0610,0.0,0.0,0.0,0.0,-4.25,1.77,0.0\n20310110:0710,26.71,8.28,0.21,8.06,-3.87,1.22,0.0\n"
        + "\nGb(i): Beam (direct) irradiance on the inclined plane (plane of the array) (W/m2)\nT2m: 2-m air temperature (degree Celsius)\n\n\nPVGIS (c) European Union, 2001-2031\n";

    /// <summary>The same on level ground: beam and diffuse add up.</summary>
    public static readonly string PvgisLevel = PvgisPanel.Replace("Slope: 30 deg.", "Slope: 0 deg.", StringComparison.Ordinal);

    /// <summary>Invented data in the publisher's documented layout of a typical year: two months of two years, cut to some hours.</summary>
    public const string PvgisTypical =
        "Latitude (decimal degrees): 45.000\nLongitude (decimal degrees): 8.000\nElevation (m): 250.0\nmonth,year\n1,2007\n2,2011\n\n"
        + "time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\n20070131:2200,-2.5,90.0,0.0,-0.0,0.0,250.0,1.2,200.0,98500.0\n20070131:2300,-3.5,92.0,0.0,-0.0,0.0,250.0,1.4,200.0,98510.0\n"
        + "20110201:0000,-1.0,80.0,0.0,-0.0,0.0,250.0,2.0,200.0,98520.0\n20110201:0100,-0.5,80.0,15.0,-0.0,0.0,250.0,2.2,200.0,98530.0\n\nT2m: 2-m air temperature (degree Celsius)\n";

    /// <summary>Invented data in the publisher's documented layout: cells of several parts with their codes of quality.</summary>
    public const string GlobalHourly = """
        "STATION","DATE","SOURCE","LATITUDE","LONGITUDE","ELEVATION","NAME","REPORT_TYPE","CALL_SIGN","QUALITY_CONTROL","WND","CIG","VIS","TMP","DEW","SLP","GA1","GA2","MA1","REM"
        "99999999999","2031-01-10T06:53:00","7","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-15","KXXX","V030","160,1,N,0046,1","22000,1,9,N","016093,1,9,9","-0067,1","-0111,1","10201,1","02,1,+00366,1,99,9","07,1,+00800,1,99,9","10240,1,08400,1","MET, as sent"
        "99999999999","2031-01-10T07:00:00","4","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-12","99999","V020","160,1,N,0046,1","22000,1,9,N","016000,1,9,9","-0070,1","-0112,1","10201,1","","","99999,9,08400,1","SYN"
        "99999999999","2031-01-10T07:53:00","7","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-15","KXXX","V030","999,9,C,0000,1","22000,1,9,N","016093,1,9,9","-0128,1","-0150,1","10203,1","00,1,+99999,9,99,9","","10246,1,08405,1","MET"
        "99999999999","2031-01-10T08:53:00","7","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-15","KXXX","V030","999,9,9,9999,9","22000,1,9,N","016093,1,9,9","-0450,3","-0150,1","10203,1","","","10246,1,08405,1","MET"
        "99999999999","2031-01-10T09:53:00","7","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","FM-15","KXXX","V030","350,1,N,0021,1","22000,1,9,N","016093,1,9,9","-0089,5","+9999,9","10203,1","09,1,+00030,1,99,9","","99999,9,99999,9","MET"
        "99999999999","2031-01-10T23:59:00","7","40.0","-105.2","1600.0","NOWHERE FIELD, XX US","SOD  ","KXXX","V030","999,9,9,9999,9","99999,9,9,N","999999,9,9,9","+9999,9","+9999,9","99999,9","","","","DAY"
        """;

    /// <summary>Invented data in the publisher's documented layout: a block of the moment and one of quarters before the hours.</summary>
    public const string OpenMeteoBlocks = """
        latitude,longitude,elevation,utc_offset_seconds,timezone,timezone_abbreviation
        40.0,-105.2,2400.0,-25200,America/Denver,MST

        time,temperature_2m (°C)
        2031-01-10T05:45,-44.0

        time,temperature_2m (°C),shortwave_radiation (W/m²)
        2031-01-10T05:00,-40.0,0.0
        2031-01-10T05:15,-41.0,0.0
        2031-01-10T05:30,-42.0,0.0

        time,temperature_2m (°C),dew_point_2m (°C),wind_speed_10m (km/h),shortwave_radiation (W/m²)
        2031-01-10T06:00,-14.0,-17.0,3.6,0.0
        2031-01-10T07:00,-16.0,-18.0,7.2,0.0
        2031-01-10T08:00,-12.0,-15.0,10.8,100.0

        time,temperature_2m_min (°C)
        2031-01-10,-16.0
        """;

    /// <summary>Invented data in the publisher's documented layout: two places in one file, in seconds since 1970.</summary>
    public const string OpenMeteoPlaces = """
        location_id,latitude,longitude,elevation,utc_offset_seconds,timezone,timezone_abbreviation
        0,40.0,-105.2,2400.0,-25200,America/Denver,MST
        1,46.25,-94.125,372.0,-21600,America/Chicago,CST

        location_id,time,temperature_2m (°C),wind_speed_10m (km/h)
        0,1925820000,-14.0,3.6
        0,1925823600,-16.0,7.2
        1,1925820000,-24.0,10.8
        1,1925823600,-26.5,14.4
        """;
}
