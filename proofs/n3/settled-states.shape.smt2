; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/settled-states.md of cairn tells the lemma,
; with a proof by hand for every number of devices. Written by proofs/generate, from the formulas
; that cairn proves with.
(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status unsat)
(declare-const |power of d1 is off| Bool)
(declare-const |power of d1 is starting| Bool)
(declare-const |power of d1 is up| Bool)
(declare-const |power of d1 is held| Bool)
(declare-const |leader of d1 is none| Bool)
(declare-const |leader of d1 is d1| Bool)
(declare-const |leader of d1 is d2| Bool)
(declare-const |leader of d1 is d3| Bool)
(declare-const |number of d1 is 1| Bool)
(declare-const |number of d1 is 2| Bool)
(declare-const |number of d1 is 3| Bool)
(declare-const |next number of d1 is 1| Bool)
(declare-const |next number of d1 is 2| Bool)
(declare-const |next number of d1 is 3| Bool)
(declare-const |priority of d1 is 1| Bool)
(declare-const |priority of d1 is 2| Bool)
(declare-const |priority of d1 is 3| Bool)
(declare-const |startup priority of d1 is 1| Bool)
(declare-const |startup priority of d1 is 2| Bool)
(declare-const |startup priority of d1 is 3| Bool)
(declare-const |power of d2 is off| Bool)
(declare-const |power of d2 is starting| Bool)
(declare-const |power of d2 is up| Bool)
(declare-const |power of d2 is held| Bool)
(declare-const |leader of d2 is none| Bool)
(declare-const |leader of d2 is d1| Bool)
(declare-const |leader of d2 is d2| Bool)
(declare-const |leader of d2 is d3| Bool)
(declare-const |number of d2 is 1| Bool)
(declare-const |number of d2 is 2| Bool)
(declare-const |number of d2 is 3| Bool)
(declare-const |next number of d2 is 1| Bool)
(declare-const |next number of d2 is 2| Bool)
(declare-const |next number of d2 is 3| Bool)
(declare-const |priority of d2 is 1| Bool)
(declare-const |priority of d2 is 2| Bool)
(declare-const |priority of d2 is 3| Bool)
(declare-const |startup priority of d2 is 1| Bool)
(declare-const |startup priority of d2 is 2| Bool)
(declare-const |startup priority of d2 is 3| Bool)
(declare-const |power of d3 is off| Bool)
(declare-const |power of d3 is starting| Bool)
(declare-const |power of d3 is up| Bool)
(declare-const |power of d3 is held| Bool)
(declare-const |leader of d3 is none| Bool)
(declare-const |leader of d3 is d1| Bool)
(declare-const |leader of d3 is d2| Bool)
(declare-const |leader of d3 is d3| Bool)
(declare-const |number of d3 is 1| Bool)
(declare-const |number of d3 is 2| Bool)
(declare-const |number of d3 is 3| Bool)
(declare-const |next number of d3 is 1| Bool)
(declare-const |next number of d3 is 2| Bool)
(declare-const |next number of d3 is 3| Bool)
(declare-const |priority of d3 is 1| Bool)
(declare-const |priority of d3 is 2| Bool)
(declare-const |priority of d3 is 3| Bool)
(declare-const |startup priority of d3 is 1| Bool)
(declare-const |startup priority of d3 is 2| Bool)
(declare-const |startup priority of d3 is 3| Bool)
(declare-const |d1 senior to d2| Bool)
(declare-const |d1 senior to d3| Bool)
(declare-const |d2 senior to d1| Bool)
(declare-const |d2 senior to d3| Bool)
(declare-const |d3 senior to d1| Bool)
(declare-const |d3 senior to d2| Bool)
(declare-const |d1--d2 plugged| Bool)
(declare-const |d1--d3 plugged| Bool)
(declare-const |d2--d3 plugged| Bool)
(declare-const n1 Bool)
(assert (= n1 (and (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held|) (or (not |power of d1 is off|) (not |power of d1 is starting|)) (or
    (not |power of d1 is up|) (and (not |power of d1 is off|) (not |power of d1 is starting|))) (or
    (not |power of d1 is held|) (and (not |power of d1 is off|) (not |power of d1 is starting|)
    (not |power of d1 is up|))) (or |leader of d1 is none| |leader of d1 is d1| |leader of d1 is d2|
    |leader of d1 is d3|) (or (not |leader of d1 is none|) (not |leader of d1 is d1|)) (or
    (not |leader of d1 is d2|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|))) (or
    (not |leader of d1 is d3|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|)
    (not |leader of d1 is d2|))) (or |number of d1 is 1| |number of d1 is 2| |number of d1 is 3|)
    (or (not |number of d1 is 1|) (not |number of d1 is 2|)) (or (not |number of d1 is 3|) (and
    (not |number of d1 is 1|) (not |number of d1 is 2|))) (or |next number of d1 is 1|
    |next number of d1 is 2| |next number of d1 is 3|) (or (not |next number of d1 is 1|)
    (not |next number of d1 is 2|)) (or (not |next number of d1 is 3|) (and
    (not |next number of d1 is 1|) (not |next number of d1 is 2|))) (or |priority of d1 is 1|
    |priority of d1 is 2| |priority of d1 is 3|) (or (not |priority of d1 is 1|)
    (not |priority of d1 is 2|)) (or (not |priority of d1 is 3|) (and (not |priority of d1 is 1|)
    (not |priority of d1 is 2|))) (or |startup priority of d1 is 1| |startup priority of d1 is 2|
    |startup priority of d1 is 3|) (or (not |startup priority of d1 is 1|)
    (not |startup priority of d1 is 2|)) (or (not |startup priority of d1 is 3|) (and
    (not |startup priority of d1 is 1|) (not |startup priority of d1 is 2|))) (or
    |power of d2 is off| |power of d2 is starting| |power of d2 is up| |power of d2 is held|) (or
    (not |power of d2 is off|) (not |power of d2 is starting|)) (or (not |power of d2 is up|) (and
    (not |power of d2 is off|) (not |power of d2 is starting|))) (or (not |power of d2 is held|)
    (and (not |power of d2 is off|) (not |power of d2 is starting|) (not |power of d2 is up|))))))
(declare-const n2 Bool)
(assert (= n2 (and n1 (or |leader of d2 is none| |leader of d2 is d1| |leader of d2 is d2|
    |leader of d2 is d3|) (or (not |leader of d2 is none|) (not |leader of d2 is d1|)) (or
    (not |leader of d2 is d2|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|))) (or
    (not |leader of d2 is d3|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|)
    (not |leader of d2 is d2|))) (or |number of d2 is 1| |number of d2 is 2| |number of d2 is 3|)
    (or (not |number of d2 is 1|) (not |number of d2 is 2|)) (or (not |number of d2 is 3|) (and
    (not |number of d2 is 1|) (not |number of d2 is 2|))) (or |next number of d2 is 1|
    |next number of d2 is 2| |next number of d2 is 3|) (or (not |next number of d2 is 1|)
    (not |next number of d2 is 2|)) (or (not |next number of d2 is 3|) (and
    (not |next number of d2 is 1|) (not |next number of d2 is 2|))) (or |priority of d2 is 1|
    |priority of d2 is 2| |priority of d2 is 3|) (or (not |priority of d2 is 1|)
    (not |priority of d2 is 2|)) (or (not |priority of d2 is 3|) (and (not |priority of d2 is 1|)
    (not |priority of d2 is 2|))) (or |startup priority of d2 is 1| |startup priority of d2 is 2|
    |startup priority of d2 is 3|) (or (not |startup priority of d2 is 1|)
    (not |startup priority of d2 is 2|)) (or (not |startup priority of d2 is 3|) (and
    (not |startup priority of d2 is 1|) (not |startup priority of d2 is 2|))) (or
    |power of d3 is off| |power of d3 is starting| |power of d3 is up| |power of d3 is held|) (or
    (not |power of d3 is off|) (not |power of d3 is starting|)) (or (not |power of d3 is up|) (and
    (not |power of d3 is off|) (not |power of d3 is starting|))) (or (not |power of d3 is held|)
    (and (not |power of d3 is off|) (not |power of d3 is starting|) (not |power of d3 is up|))))))
(declare-const n3 Bool)
(assert (= n3 (and (not |power of d1 is up|) (not |power of d1 is held|))))
(declare-const n4 Bool)
(assert (= n4 (and (not |power of d2 is up|) (not |power of d2 is held|))))
(declare-const n5 Bool)
(assert (= n5 (and (not |power of d3 is up|) (not |power of d3 is held|))))
(declare-const n6 Bool)
(assert (= n6 (and (or (not |power of d2 is up|) (not |power of d3 is up|) (not |d2--d3 plugged|))
    (or (not |power of d1 is up|) (not |power of d2 is up|) (not |power of d3 is up|)
    (not |d1--d2 plugged|) (not |d1--d3 plugged|)))))
(declare-const n7 Bool)
(assert (= n7 (and (or (not |power of d1 is up|) (not |power of d3 is up|) (not |d1--d3 plugged|))
    (or (not |power of d1 is up|) (not |power of d2 is up|) (not |d1--d2 plugged|) n6))))
(declare-const n8 Bool)
(assert (= n8 (and (or (not |power of d1 is up|) (not |power of d2 is up|) (not |d1--d2 plugged|))
    (or n6 n7))))
(declare-const n9 Bool)
(assert (= n9 (and |leader of d1 is none| |leader of d2 is none|)))
(declare-const n10 Bool)
(assert (= n10 (and |leader of d1 is d1| |leader of d2 is d1|)))
(declare-const n11 Bool)
(assert (= n11 (and |leader of d1 is d2| |leader of d2 is d2|)))
(declare-const n12 Bool)
(assert (= n12 (and |leader of d1 is d3| |leader of d2 is d3|)))
(declare-const n13 Bool)
(assert (= n13 (and |leader of d1 is none| |leader of d3 is none|)))
(declare-const n14 Bool)
(assert (= n14 (and |leader of d1 is d1| |leader of d3 is d1|)))
(declare-const n15 Bool)
(assert (= n15 (and |leader of d1 is d2| |leader of d3 is d2|)))
(declare-const n16 Bool)
(assert (= n16 (and |leader of d1 is d3| |leader of d3 is d3|)))
(declare-const n17 Bool)
(assert (= n17 (and |leader of d2 is none| |leader of d3 is none|)))
(declare-const n18 Bool)
(assert (= n18 (and |leader of d2 is d1| |leader of d3 is d1|)))
(declare-const n19 Bool)
(assert (= n19 (and |leader of d2 is d2| |leader of d3 is d2|)))
(declare-const n20 Bool)
(assert (= n20 (and |leader of d2 is d3| |leader of d3 is d3|)))
(declare-const n21 Bool)
(assert (= n21 (and n2 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
    |leader of d3 is d3|) (or (not |leader of d3 is none|) (not |leader of d3 is d1|)) (or
    (not |leader of d3 is d2|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|))) (or
    (not |leader of d3 is d3|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|)
    (not |leader of d3 is d2|))) (or |number of d3 is 1| |number of d3 is 2| |number of d3 is 3|)
    (or (not |number of d3 is 1|) (not |number of d3 is 2|)) (or (not |number of d3 is 3|) (and
    (not |number of d3 is 1|) (not |number of d3 is 2|))) (or |next number of d3 is 1|
    |next number of d3 is 2| |next number of d3 is 3|) (or (not |next number of d3 is 1|)
    (not |next number of d3 is 2|)) (or (not |next number of d3 is 3|) (and
    (not |next number of d3 is 1|) (not |next number of d3 is 2|))) (or |priority of d3 is 1|
    |priority of d3 is 2| |priority of d3 is 3|) (or (not |priority of d3 is 1|)
    (not |priority of d3 is 2|)) (or (not |priority of d3 is 3|) (and (not |priority of d3 is 1|)
    (not |priority of d3 is 2|))) (or |startup priority of d3 is 1| |startup priority of d3 is 2|
    |startup priority of d3 is 3|) (or (not |startup priority of d3 is 1|)
    (not |startup priority of d3 is 2|)) (or (not |startup priority of d3 is 3|) (and
    (not |startup priority of d3 is 1|) (not |startup priority of d3 is 2|))) (or
    |power of d1 is up| |leader of d1 is none|) (or |power of d2 is up| |leader of d2 is none|) (or
    |power of d3 is up| |leader of d3 is none|) (or (not |d1 senior to d2|) (and
    (not |d2 senior to d1|) (not n3) (not n4))) (or (not |d1 senior to d2|) |d1 senior to d3|
    |d3 senior to d2| n5) (or (not |d1 senior to d3|) (and (not |d3 senior to d1|) (not n3) (not n5)))
    (or |d1 senior to d2| (not |d1 senior to d3|) |d2 senior to d3| n4) (or (not |d2 senior to d1|)
    (and (not |d1 senior to d2|) (not n3) (not n4))) (or (not |d2 senior to d1|) |d2 senior to d3|
    |d3 senior to d1| n5) (or (not |d2 senior to d3|) (and (not |d3 senior to d2|) (not n4) (not n5)))
    (or |d1 senior to d3| |d2 senior to d1| (not |d2 senior to d3|) n3) (or (not |d3 senior to d1|)
    (and (not |d1 senior to d3|) (not n3) (not n5))) (or |d2 senior to d1| (not |d3 senior to d1|)
    |d3 senior to d2| n4) (or (not |d3 senior to d2|) (and (not |d2 senior to d3|) (not n4) (not n5)))
    (or |d1 senior to d2| |d3 senior to d1| (not |d3 senior to d2|) n3))))
; Every variable has one value, and the laws of all states apply.
(assert n21)
; And this is false: what the formulas call settled is that each class follows one leader, which is
; one of the class and leads itself.
(assert (xor (and (or (not |power of d1 is up|) |leader of d1 is d1| (and |leader of d1 is d2|
    (not n8)) (and |leader of d1 is d3| (not n7))) (or (not |power of d2 is up|)
    |leader of d2 is d2| (and |leader of d2 is d1| (not n8)) (and |leader of d2 is d3| (not n6)))
    (or (not |power of d3 is up|) |leader of d3 is d3| (and |leader of d3 is d1| (not n7)) (and
    |leader of d3 is d2| (not n6))) (or (not |power of d1 is up|) (not |power of d2 is up|)
    (not |d1--d2 plugged|) n9 n10 n11 n12) (or (not |power of d1 is up|) (not |power of d3 is up|)
    (not |d1--d3 plugged|) n13 n14 n15 n16) (or (not |power of d2 is up|) (not |power of d3 is up|)
    (not |d2--d3 plugged|) n17 n18 n19 n20)) (and (or (not |power of d1 is up|) |leader of d1 is d1|
    (and |leader of d1 is d2| |leader of d2 is d2| (not n8)) (and |leader of d1 is d3|
    |leader of d3 is d3| (not n7))) (or n8 n9 n10 n11 n12) (or n7 n13 n14 n15 n16) (or
    (not |power of d2 is up|) |leader of d2 is d2| (and |leader of d1 is d1| |leader of d2 is d1|
    (not n8)) (and |leader of d2 is d3| |leader of d3 is d3| (not n6))) (or n6 n17 n18 n19 n20) (or
    (not |power of d3 is up|) |leader of d3 is d3| (and |leader of d1 is d1| |leader of d3 is d1|
    (not n7)) (and |leader of d2 is d2| |leader of d3 is d2| (not n6))))))
(check-sat)
(exit)
