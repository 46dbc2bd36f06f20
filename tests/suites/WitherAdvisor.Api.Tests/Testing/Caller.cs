using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>Calls the service as a factory's system would.</summary>
public sealed class Caller(HttpClient client)
{
    public Task<Reply> Get(string path) => Send(HttpMethod.Get, path, null);

    public Task<Reply> Put(string path, JsonNode body) => Send(HttpMethod.Put, path, Json(body.ToJsonString()));

    public Task<Reply> Post(string path, JsonNode body) => Send(HttpMethod.Post, path, Json(body.ToJsonString()));

    public Task<Reply> Post(string path) => Send(HttpMethod.Post, path, null);

    public Task<Reply> PostText(string path, string body, string contentType = "application/json") =>
        Send(HttpMethod.Post, path, Content(Encoding.UTF8.GetBytes(body), contentType));

    public Task<Reply> SendJson(HttpMethod method, string path, string body) => Send(method, path, Json(body));

    public Task<Reply> SendBytes(HttpMethod method, string path, byte[] body) =>
        Send(method, path, Content(body, "application/json"));

    public async Task<Reply> Send(HttpMethod method, string path, HttpContent? content)
    {
        using HttpRequestMessage request = new(method, path) { Content = content };
        using HttpResponseMessage response = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return new(
            (int)response.StatusCode,
            await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            response.Content.Headers.ContentType?.MediaType,
            response.Headers);
    }

    private static ByteArrayContent Json(string text) => Content(Encoding.UTF8.GetBytes(text), "application/json");

    private static ByteArrayContent Content(byte[] bytes, string contentType)
    {
        ByteArrayContent content = new(bytes);
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(contentType);
        return content;
    }
}
