using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Exchange.Fhir;
using Progression.Exchange.Import;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>Bundles changed at random: every one is an answer, and what is refused leaves nothing behind.</summary>
public sealed class FhirMutationTests
{
    private const int Mutants = 5000;
    private const int Seed = 7301;

    private static readonly Case Into = InventedOrders.Full with { PreOp = null, Assessments = [], Born = null, BodyMass = null };
    private static readonly JsonObject Good = FhirBundle.Of(InventedOrders.Of(InventedOrders.Full with { Assessments = InventedOrders.Full.Assessments[^1..] }) with { WithBirthDate = true });

    [Fact]
    public void Five_thousand_changed_bundles_are_all_or_nothing()
    {
        Random chance = new(Seed);
        byte[] text = Encoding.UTF8.GetBytes(Good.ToJsonString());
        (int taken, int refused) = (0, 0);
        Stopwatch longest = new();
        for (int number = 0; number < Mutants; number++)
        {
            byte[] mutant = number % 2 == 0 ? Bytes(text, chance) : Encoding.UTF8.GetBytes(Tree(chance).ToJsonString());
            Stopwatch clock = Stopwatch.StartNew();
            ImportResult read = FhirImport.Of(mutant, new ImportGround(Into, InventedOrders.Library, InventedOrders.Today), InventedOrders.Codes).Result;
            longest = clock.Elapsed > longest.Elapsed ? clock : longest;
            clock.Stop();
            if (read.Case is { } entered)
            {
                taken++;
                Assert.Empty(read.Problems);
                Assert.All(entered.Assessments.Append(entered.PreOp).OfType<Assessment>(), Kept);
                Assert.Equal((Into.Code, Into.Operation), (entered.Code, entered.Operation));
                Assert.Equal(read.Coming, Count(entered));
            }
            else
            {
                refused++;
                Assert.True(read.Problems.Length > 0 || read.Coming == 0);
            }
        }

        // Both kinds have to come up often, else the changes are too gentle or too rough to say anything.
        Assert.InRange(taken, 500, 4500);
        Assert.InRange(refused, 500, 4500);
        Assert.True(longest.Elapsed < TimeSpan.FromSeconds(20), longest.Elapsed.ToString());
    }

    private static int Count(Case entered) =>
        entered.Assessments.Append(entered.PreOp).OfType<Assessment>().Sum(visit => visit.Readings.Count + visit.SignsSeen.Count) + (entered.Born is null ? 0 : 1) + (entered.BodyMass is null ? 0 : 1);

    private static void Kept(Assessment visit)
    {
        Assert.InRange(visit.Date, Operation.Earliest, InventedOrders.Today);
        Assert.All(visit.Readings.Values, reading =>
        {
            Measure measure = InventedOrders.Library.Measures[reading.Measure];
            Assert.InRange(reading.Value, measure.Least, measure.Most);
            Assert.All(reading.Each, trial => Assert.InRange(trial, measure.Least, measure.Most));
        });
    }

    private static byte[] Bytes(byte[] text, Random chance)
    {
        List<byte> bytes = [.. text];
        for (int change = chance.Next(1, 4); change > 0; change--)
        {
            int at = chance.Next(bytes.Count);
            switch (chance.Next(5))
            {
                case 0: bytes[at] = (byte)chance.Next(256); break;
                case 1: bytes[at] = (byte)"0123456789"[chance.Next(10)]; break;
                case 2: bytes.RemoveRange(at, Math.Min(chance.Next(1, 40), bytes.Count - at - 1)); break;
                case 3: bytes.InsertRange(at, bytes.GetRange(at, Math.Min(chance.Next(1, 400), bytes.Count - at))); break;
                default: bytes.Insert(at, (byte)chance.Next(256)); break;
            }
        }

        return chance.Next(20) == 0 ? [.. bytes.Take(chance.Next(bytes.Count))] : [.. bytes];
    }

    private static JsonObject Tree(Random chance)
    {
        JsonObject bundle = Good.DeepClone().AsObject();
        for (int change = chance.Next(1, 3); change > 0; change--)
        {
            JsonObject[] parts = [.. BundleChecks.Objects(bundle).Where(part => part.Count > 0)];
            JsonObject part = parts[chance.Next(parts.Length)];
            string member = part.ElementAt(chance.Next(part.Count)).Key;
            JsonObject other = parts[chance.Next(parts.Length)];
            JsonNode? junk = chance.Next(9) switch
            {
                0 => null,
                1 => JsonValue.Create(chance.Next(-1000, 1000)),
                2 => JsonNode.Parse("1e400"),
                3 => JsonValue.Create("\u001b[2J\u202e\0 2026-02-30"),
                4 => new JsonArray(),
                5 => JsonNode.Parse(string.Concat(Enumerable.Repeat("[", 60)) + string.Concat(Enumerable.Repeat("]", 60))),
                6 => JsonValue.Create(true),
                _ => other.ElementAt(chance.Next(other.Count)).Value?.DeepClone(),
            };
            if (chance.Next(4) == 0)
            {
                part.Remove(member);
            }
            else
            {
                part[member] = junk;
            }
        }

        return bundle;
    }
}
