using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Store.Contract;

/// <summary>Sites and their troughs.</summary>
public abstract class SiteStoreTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    [Fact]
    public async Task Every_field_of_a_site_comes_back()
    {
        var site = Invented.Filled<StoredSite>();

        await Store.Sites.PutSite(site, Cancel);

        Assert.Equal(site, await Store.Sites.FindSite(site.Id, Cancel));
        Assert.Equal([site], await Store.Sites.ListSites(Cancel));
    }

    [Fact]
    public async Task A_pressure_nobody_measured_stays_unknown()
    {
        var site = Invented.Sparse<StoredSite>();

        await Store.Sites.PutSite(site, Cancel);

        var found = await Store.Sites.FindSite(site.Id, Cancel);
        Assert.Null(found!.Site.StationPressurePa);
        Assert.Equal(site, found);
    }

    [Fact]
    public async Task A_site_can_take_a_feed_and_leave_it_again()
    {
        var site = Invented.Site("hill") with { Feed = "valley-feed" };
        await Store.Sites.PutSite(site, Cancel);
        Assert.Equal("valley-feed", (await Store.Sites.FindSite("hill", Cancel))!.Feed);

        await Store.Sites.PutSite(site with { Feed = null }, Cancel);

        Assert.Null((await Store.Sites.FindSite("hill", Cancel))!.Feed);
    }

    [Theory]
    [InlineData(double.MaxValue)]
    [InlineData(double.MinValue)]
    [InlineData(double.Epsilon)]
    [InlineData(0.1 + 0.2)]
    [InlineData(9007199254740993.0)]
    public async Task Doubles_come_back_to_the_last_bit(double elevationM)
    {
        var site = Invented.Site("hill");
        site = site with { Site = site.Site with { ElevationM = elevationM } };

        await Store.Sites.PutSite(site, Cancel);

        var found = await Store.Sites.FindSite("hill", Cancel);
        Assert.Equal(BitConverter.DoubleToInt64Bits(elevationM), BitConverter.DoubleToInt64Bits(found!.Site.ElevationM));
    }

    [Fact]
    public async Task A_later_put_replaces_every_field_and_keeps_what_hangs_on_the_site()
    {
        await Store.WithTrough();
        var changed = Invented.Filled<StoredSite>(start: 1000) with { Id = "hill" };

        await Store.Sites.PutSite(changed, Cancel);

        Assert.Equal([changed], await Store.Sites.ListSites(Cancel));
        Assert.Equal([Invented.Trough("hill", "t1")], await Store.Sites.ListTroughs("hill", Cancel));
    }

    [Fact]
    public async Task A_later_put_can_take_a_measured_pressure_back()
    {
        var site = Invented.Site("hill");
        await Store.Sites.PutSite(site, Cancel);

        await Store.Sites.PutSite(site with { Site = site.Site with { StationPressurePa = null } }, Cancel);

        Assert.Null((await Store.Sites.FindSite("hill", Cancel))!.Site.StationPressurePa);
    }

    [Fact]
    public async Task Every_field_of_a_trough_comes_back_and_a_later_put_replaces_it()
    {
        await Store.WithTrough();
        var first = Invented.Trough("hill", "t1");
        Assert.Equal(first, await Store.Sites.FindTrough("hill", "t1", Cancel));

        var second = Invented.Filled<StoredTrough>(start: 1000) with { SiteId = "hill", Id = "t1" };
        await Store.Sites.PutTrough(second, Cancel);

        Assert.Equal([second], await Store.Sites.ListTroughs("hill", Cancel));
    }

    [Fact]
    public async Task The_same_trough_id_at_two_sites_is_two_troughs()
    {
        await Store.WithTrough("hill", "t1");
        await Store.WithTrough("valley", "t1");

        Assert.Equal("hill", (await Store.Sites.FindTrough("hill", "t1", Cancel))!.SiteId);
        Assert.Equal("valley", Assert.Single(await Store.Sites.ListTroughs("valley", Cancel)).SiteId);
    }

    [Fact]
    public async Task What_is_not_there_is_null_or_an_empty_list()
    {
        Assert.Null(await Store.Sites.FindSite("nowhere", Cancel));
        Assert.Null(await Store.Sites.FindTrough("nowhere", "t1", Cancel));
        Assert.Empty(await Store.Sites.ListSites(Cancel));
        Assert.Empty(await Store.Sites.ListTroughs("nowhere", Cancel));
    }

    [Fact]
    public async Task A_trough_of_an_unknown_site_is_refused_by_name()
    {
        var refusal = await Assert.ThrowsAsync<ParentNotFoundException>(
            () => Store.Sites.PutTrough(Invented.Trough("nowhere", "t1"), Cancel));

        Assert.Contains("'nowhere'", refusal.Message, StringComparison.Ordinal);
        Assert.Empty(await Store.Sites.ListTroughs("nowhere", Cancel));
    }
}
