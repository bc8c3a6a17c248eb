using Proveout.Engine.Electrical;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Where leads are put while one control is operated.</summary>
public sealed class ContactPairsTests
{
    [Theory]
    [InlineData("alderbrook")]
    [InlineData("quarrymoor")]
    [InlineData("pennywort")]
    public void Every_pair_has_a_contact_of_the_control_between_metal_of_its_two_places(string sample)
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design(sample));
        var asked = 0;
        foreach (var setUp in DeadSetUps.Of(wiring.Design).Where(setUp => setUp.Operated is not null))
        {
            bool Conducts(NetworkElement element) => StateNetwork.Conducts(wiring, setUp.State, element);
            var (nets, places) = (new MetalNets(wiring, Conducts), new ProbePlaces(wiring, new MachineState(setUp.State.PlugsApart, [])));
            var contacts = setUp.Operated!.ContactsIn(wiring).ToArray();
            var pairs = ContactPairs.Of(wiring, Conducts, places, setUp.Operated);
            asked += pairs.Count;
            Assert.All(pairs, pair => Assert.True(places.Holds(pair.A) && places.Holds(pair.B)));
            Assert.All(pairs, pair => Assert.Contains(contacts, contact => nets.Of(contact.A) == nets.Of(pair.A) && nets.Of(contact.B) == nets.Of(pair.B)));
            Assert.Equal(pairs.Count, pairs.Select(pair => (Math.Min(pair.A, pair.B), Math.Max(pair.A, pair.B))).Distinct().Count());
            Assert.All(
                contacts.Where(contact => nets.Members(nets.Of(contact.A)).Any(places.Holds) && nets.Members(nets.Of(contact.B)).Any(places.Holds) && nets.Of(contact.A) != nets.Of(contact.B)),
                contact => Assert.Contains(pairs, pair => nets.Of(contact.A) == nets.Of(pair.A) && nets.Of(contact.B) == nets.Of(pair.B)));
        }

        Assert.True(asked > 0);
    }
}
