using System.Globalization;
using System.Text;

namespace WitherAdvisor.Process.Tests;

/// <summary>A log of invented withers of the past, as long as is wanted, as CSV.</summary>
public static class LogOfPast
{
    public static string Of(int rows, int noteLength = 0)
    {
        StringBuilder csv = new("loaded_at,trough,division,field,cultivar,green_weight_kg,on_trough_hours,withered_weight_kg,turned_at_hours,verdict,note\r\n");
        DateTime loaded = new(2015, 1, 1, 6, 0, 0, DateTimeKind.Unspecified);
        string longNote = new('n', noteLength);
        for (int row = 0; row < rows; row++)
        {
            csv.Append(CultureInfo.InvariantCulture,
                $"{loaded.AddHours(row):yyyy-MM-dd HH:mm},trough-1,Invented division,Field {row % 30},Clone A,{1000 + row % 200},{8 + row % 5}.25,{500 + row % 60},3;6,right,\"=row {row}, 茶{longNote}\"\r\n");
        }

        return csv.ToString();
    }
}
