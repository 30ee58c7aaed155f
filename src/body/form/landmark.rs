//! Named places of the skin. In: a name, and a side where it has one. Out: its number among the baked landmarks.

/// A place of the skin with a name; the order is the one in which `bake` writes them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Landmark {
    /// The top of the head.
    Vertex = 0,
    /// Where the large fontanelle lies.
    Bregma,
    /// Between the brows.
    Glabella,
    /// The tip of the nose.
    Nose,
    /// The middle of the upper lip.
    Mouth,
    /// The point of the chin.
    Chin,
    /// Where chin and neck meet.
    Submental,
    /// The back of the head, where it is farthest back.
    Occiput,
    /// Where the back of the head goes over into the neck.
    Suboccipital,
    /// The back of the neck.
    Nape,
    /// The front of the chest.
    Sternum,
    /// The navel.
    Navel,
    /// The middle of the back.
    MidBack,
    /// Over the sacrum.
    Sacrum,
    /// Where the head is widest.
    Parietal,
    /// An ear.
    Ear,
    /// A closed eye.
    Eye,
    /// The point of a shoulder.
    Acromion,
    /// A shoulder blade.
    Blade,
    /// The crest of the hip bone.
    IliacCrest,
    /// A buttock.
    Buttock,
    /// An elbow.
    Elbow,
    /// The hollow of a hand.
    Palm,
    /// The back of a hand.
    HandBack,
    /// The tip of a middle finger.
    Fingertip,
    /// A knee.
    Knee,
    /// A heel.
    Heel,
    /// The tip of a great toe.
    Toe,
    /// The middle of a sole.
    Sole,
}

/// How many there are.
pub const LANDMARKS: usize = 29;
