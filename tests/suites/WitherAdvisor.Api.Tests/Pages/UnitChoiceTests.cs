using Microsoft.AspNetCore.Http;
using WitherAdvisor.Api.Pages;
using WitherAdvisor.Words.Units;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class UnitChoiceTests
{
    [Fact]
    public void Nobody_who_has_not_chosen_is_given_a_cookie()
    {
        DefaultHttpContext http = new();

        Assert.Equal(PersonUnits.Usual, UnitChoice.Read(http));
        Assert.Equal(0, http.Response.Headers.SetCookie.Count);
    }

    [Fact]
    public void A_choice_in_the_address_is_kept_and_leaves_the_other_unit_alone()
    {
        DefaultHttpContext http = new();
        http.Request.Headers.Cookie = "weight=lb";
        http.Request.QueryString = new("?temperature=f");

        Assert.Equal(new PersonUnits(TemperatureScale.Fahrenheit, WeightUnit.Pound), UnitChoice.Read(http));
        Assert.Contains(http.Response.Headers.SetCookie, cookie => cookie!.StartsWith("temperature=f;", StringComparison.Ordinal));
    }

    [Fact]
    public void Nonsense_chooses_nothing()
    {
        DefaultHttpContext http = new();
        http.Request.Headers.Cookie = "temperature=kelvin";
        http.Request.QueryString = new("?weight=stone&weight=lb");

        Assert.Equal(PersonUnits.Usual, UnitChoice.Read(http));
    }
}
