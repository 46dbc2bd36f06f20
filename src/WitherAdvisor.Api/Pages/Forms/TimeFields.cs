namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>Names of the two fields that one time is typed in.</summary>
/// <remarks>
/// Two fields and not a browser's own date-and-time field: that one shows 2 p.m. or 14:00 by the browser's language,
/// and at night 2 p.m. and 2 a.m. look alike.
/// </remarks>
public static class TimeFields
{
    public static string Date(string field) => field + "_date";

    public static string Time(string field) => field + "_time";
}
