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
(assert (= n9 (and |power of d1 is up| (not |leader of d1 is none|))))
(declare-const n10 Bool)
(assert (= n10 (and |power of d1 is up| |leader of d1 is d1|)))
(declare-const n11 Bool)
(assert (= n11 (and |power of d2 is up| (not |leader of d2 is none|))))
(declare-const n12 Bool)
(assert (= n12 (and |power of d2 is up| |leader of d2 is d2|)))
(declare-const n13 Bool)
(assert (= n13 (and |power of d3 is up| (not |leader of d3 is none|))))
(declare-const n14 Bool)
(assert (= n14 (and |power of d3 is up| |leader of d3 is d3|)))
(declare-const n15 Bool)
(assert (= n15 (and |power of d2 is up| |leader of d2 is d2| (not n8))))
(declare-const n16 Bool)
(assert (= n16 (and (not |number of d2 is 2|) (not |number of d2 is 3|))))
(declare-const n17 Bool)
(assert (= n17 (and (not |number of d1 is 2|) (not |number of d1 is 3|))))
(declare-const n18 Bool)
(assert (= n18 (and (or (not |number of d1 is 3|) (not |number of d2 is 2|)) (or
    (not |number of d2 is 1|) n17))))
(declare-const n19 Bool)
(assert (= n19 (and |priority of d1 is 3| |priority of d2 is 2|)))
(declare-const n20 Bool)
(assert (= n20 (and (not |priority of d1 is 2|) (not |priority of d1 is 3|))))
(declare-const n21 Bool)
(assert (= n21 (and |priority of d2 is 1| (not n20))))
(declare-const n22 Bool)
(assert (= n22 (and |priority of d1 is 2| |priority of d2 is 3|)))
(declare-const n23 Bool)
(assert (= n23 (and (not |priority of d2 is 2|) (not |priority of d2 is 3|))))
(declare-const n24 Bool)
(assert (= n24 (and |priority of d1 is 1| (not n23))))
(declare-const n25 Bool)
(assert (= n25 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (or (and |number of d1 is 2|
    |number of d2 is 3|) (and |number of d1 is 1| (not n16)) n18))) (not n22) (not n24))))
(declare-const n26 Bool)
(assert (= n26 (and |power of d2 is up| |leader of d2 is d2| (not n8) (not n19) (not n21) (not n25))))
(declare-const n27 Bool)
(assert (= n27 (and |power of d3 is up| |leader of d3 is d3| (not n7))))
(declare-const n28 Bool)
(assert (= n28 (and (not |number of d3 is 2|) (not |number of d3 is 3|))))
(declare-const n29 Bool)
(assert (= n29 (and (or (not |number of d1 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n17))))
(declare-const n30 Bool)
(assert (= n30 (and |priority of d1 is 3| |priority of d3 is 2|)))
(declare-const n31 Bool)
(assert (= n31 (and |priority of d3 is 1| (not n20))))
(declare-const n32 Bool)
(assert (= n32 (and |priority of d1 is 2| |priority of d3 is 3|)))
(declare-const n33 Bool)
(assert (= n33 (and (not |priority of d3 is 2|) (not |priority of d3 is 3|))))
(declare-const n34 Bool)
(assert (= n34 (and |priority of d1 is 1| (not n33))))
(declare-const n35 Bool)
(assert (= n35 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (or (and |number of d1 is 2|
    |number of d3 is 3|) (and |number of d1 is 1| (not n28)) n29))) (not n32) (not n34))))
(declare-const n36 Bool)
(assert (= n36 (and |power of d3 is up| |leader of d3 is d3| (not n7) (not n30) (not n31) (not n35))))
(declare-const n37 Bool)
(assert (= n37 (and |power of d1 is up| |leader of d1 is d1| (not n8))))
(declare-const n38 Bool)
(assert (= n38 (and (not n19) (not n21) (or |d2 senior to d1| (and (not |d1 senior to d2|) (not n18))))))
(declare-const n39 Bool)
(assert (= n39 (and |power of d1 is up| |leader of d1 is d1| (not n8) (not n22) (not n24) (not n38))))
(declare-const n40 Bool)
(assert (= n40 (and |power of d3 is up| |leader of d3 is d3| (not n6))))
(declare-const n41 Bool)
(assert (= n41 (and (or (not |number of d2 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n16))))
(declare-const n42 Bool)
(assert (= n42 (and |priority of d2 is 3| |priority of d3 is 2|)))
(declare-const n43 Bool)
(assert (= n43 (and |priority of d3 is 1| (not n23))))
(declare-const n44 Bool)
(assert (= n44 (and |priority of d2 is 2| |priority of d3 is 3|)))
(declare-const n45 Bool)
(assert (= n45 (and |priority of d2 is 1| (not n33))))
(declare-const n46 Bool)
(assert (= n46 (and (or |d2 senior to d3| (and (not |d3 senior to d2|) (or (and |number of d2 is 2|
    |number of d3 is 3|) (and |number of d2 is 1| (not n28)) n41))) (not n44) (not n45))))
(declare-const n47 Bool)
(assert (= n47 (and |power of d3 is up| |leader of d3 is d3| (not n6) (not n42) (not n43) (not n46))))
(declare-const n48 Bool)
(assert (= n48 (and |power of d1 is up| |leader of d1 is d1| (not n7))))
(declare-const n49 Bool)
(assert (= n49 (and (not n30) (not n31) (or |d3 senior to d1| (and (not |d1 senior to d3|) (not n29))))))
(declare-const n50 Bool)
(assert (= n50 (and |power of d1 is up| |leader of d1 is d1| (not n7) (not n32) (not n34) (not n49))))
(declare-const n51 Bool)
(assert (= n51 (and |power of d2 is up| |leader of d2 is d2| (not n6))))
(declare-const n52 Bool)
(assert (= n52 (and (not n42) (not n43) (or |d3 senior to d2| (and (not |d2 senior to d3|) (not n41))))))
(declare-const n53 Bool)
(assert (= n53 (and |power of d2 is up| |leader of d2 is d2| (not n6) (not n44) (not n45) (not n52))))
(declare-const n54 Bool)
(assert (= n54 (and (not n9) (or (not |power of d1 is up|) (not |leader of d1 is none|) (and
    |power of d2 is up| (not |leader of d2 is none|) (not n8)) (and |power of d3 is up|
    (not |leader of d3 is none|) (not n7))))))
(declare-const n55 Bool)
(assert (= n55 (and (not n11) (or (not |power of d2 is up|) (not |leader of d2 is none|) (and
    |power of d1 is up| (not |leader of d1 is none|) (not n8)) (and |power of d3 is up|
    (not |leader of d3 is none|) (not n6))))))
(declare-const n56 Bool)
(assert (= n56 (and (not n13) (or (not |power of d3 is up|) (not |leader of d3 is none|) (and
    |power of d1 is up| (not |leader of d1 is none|) (not n7)) (and |power of d2 is up|
    (not |leader of d2 is none|) (not n6))))))
(declare-const n57 Bool)
(assert (= n57 (and (or (not |power of d1 is up|) (not |leader of d1 is d1|) n26 n36) (or n10 n15
    n27 n54 (and (not n19) (not n21) (not n25) (not n8) (not n10) (not n12) (not n40) (not n55))
    (and (not n30) (not n31) (not n35) (not n7) (not n10) (not n14) (not n51) (not n56))))))
(declare-const n58 Bool)
(assert (= n58 (and (or (not |power of d2 is up|) (not |leader of d2 is d2|) n39 n47) (or n12 n37
    n40 n55 (and (not n22) (not n24) (not n38) (not n8) (not n10) (not n12) (not n27) (not n54))
    (and (not n42) (not n43) (not n46) (not n6) (not n12) (not n14) (not n48) (not n56))))))
(declare-const n59 Bool)
(assert (= n59 (and (or (not |power of d3 is up|) (not |leader of d3 is d3|) n50 n53) (or n14 n48
    n51 n56 (and (not n32) (not n34) (not n49) (not n7) (not n10) (not n14) (not n15) (not n54))
    (and (not n44) (not n45) (not n52) (not n6) (not n12) (not n14) (not n37) (not n55))))))
(declare-const n60 Bool)
(assert (= n60 (and |leader of d1 is d2| |power of d2 is up| |leader of d2 is d2| (not n8) (not n39)
    (not n47))))
(declare-const n61 Bool)
(assert (= n61 (and |leader of d1 is d3| |power of d3 is up| |leader of d3 is d3| (not n7) (not n50)
    (not n53))))
(declare-const n62 Bool)
(assert (= n62 (and |power of d1 is up| |leader of d1 is d1| |leader of d2 is d1| (not n8) (not n26)
    (not n36))))
(declare-const n63 Bool)
(assert (= n63 (and |leader of d2 is d3| |power of d3 is up| |leader of d3 is d3| (not n6) (not n50)
    (not n53))))
(declare-const n64 Bool)
(assert (= n64 (and |power of d1 is up| |leader of d1 is d1| |leader of d3 is d1| (not n7) (not n26)
    (not n36))))
(declare-const n65 Bool)
(assert (= n65 (and |power of d2 is up| |leader of d2 is d2| |leader of d3 is d2| (not n6) (not n39)
    (not n47))))
(declare-const n66 Bool)
(assert (= n66 (and (or (not |number of d1 is 1|) (not |number of d2 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d2 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d2 is 3|)))))
(declare-const n67 Bool)
(assert (= n67 (and |leader of d2 is d1| (not n8))))
(declare-const n68 Bool)
(assert (= n68 (and |leader of d2 is d3| (not n6))))
(declare-const n69 Bool)
(assert (= n69 (and (not n12) (not n67) (not n68))))
(declare-const n70 Bool)
(assert (= n70 (and |leader of d1 is d1| |leader of d2 is d1|)))
(declare-const n71 Bool)
(assert (= n71 (and |leader of d1 is d2| |leader of d2 is d2|)))
(declare-const n72 Bool)
(assert (= n72 (and |leader of d1 is d3| |leader of d2 is d3|)))
(declare-const n73 Bool)
(assert (= n73 (and |leader of d1 is d1| (not n26) (not n36))))
(declare-const n74 Bool)
(assert (= n74 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n11)
    (not n22) (not n24) (not n38))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n60 n61 n69 n70 n71 n72 n73))))
(declare-const n75 Bool)
(assert (= n75 (and (not n8) (not n66) (not n74))))
(declare-const n76 Bool)
(assert (= n76 (and (or (not |number of d1 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d3 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n77 Bool)
(assert (= n77 (and |leader of d3 is d1| (not n7))))
(declare-const n78 Bool)
(assert (= n78 (and |leader of d3 is d2| (not n6))))
(declare-const n79 Bool)
(assert (= n79 (and (not n14) (not n77) (not n78))))
(declare-const n80 Bool)
(assert (= n80 (and |leader of d1 is d1| |leader of d3 is d1|)))
(declare-const n81 Bool)
(assert (= n81 (and |leader of d1 is d2| |leader of d3 is d2|)))
(declare-const n82 Bool)
(assert (= n82 (and |leader of d1 is d3| |leader of d3 is d3|)))
(declare-const n83 Bool)
(assert (= n83 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n13)
    (not n32) (not n34) (not n49))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n60 n61 n73 n79 n80 n81 n82))))
(declare-const n84 Bool)
(assert (= n84 (and (not n7) (not n76) (not n83))))
(declare-const n85 Bool)
(assert (= n85 (and |power of d1 is up| (not |leader of d1 is none|) (or n10 n15 n27) (not n60)
    (not n61) (not n73))))
(declare-const n86 Bool)
(assert (= n86 (and (not n75) (not n84) n85)))
(declare-const n87 Bool)
(assert (= n87 (and |leader of d1 is d2| (not n8))))
(declare-const n88 Bool)
(assert (= n88 (and |leader of d1 is d3| (not n7))))
(declare-const n89 Bool)
(assert (= n89 (and (not n10) (not n87) (not n88))))
(declare-const n90 Bool)
(assert (= n90 (and |leader of d2 is d2| (not n39) (not n47))))
(declare-const n91 Bool)
(assert (= n91 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n9)
    (not n19) (not n21) (not n25))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n62 n63 n70 n71 n72 n89 n90))))
(declare-const n92 Bool)
(assert (= n92 (and (not n8) (not n66) (not n91))))
(declare-const n93 Bool)
(assert (= n93 (and (or (not |number of d2 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d2 is 2|) (not |number of d3 is 2|)) (or (not |number of d2 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n94 Bool)
(assert (= n94 (and |leader of d2 is d1| |leader of d3 is d1|)))
(declare-const n95 Bool)
(assert (= n95 (and |leader of d2 is d2| |leader of d3 is d2|)))
(declare-const n96 Bool)
(assert (= n96 (and |leader of d2 is d3| |leader of d3 is d3|)))
(declare-const n97 Bool)
(assert (= n97 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n13)
    (not n44) (not n45) (not n52))) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n62 n63 n79 n90 n94 n95 n96))))
(declare-const n98 Bool)
(assert (= n98 (and (not n6) (not n93) (not n97))))
(declare-const n99 Bool)
(assert (= n99 (and |power of d2 is up| (not |leader of d2 is none|) (or n12 n37 n40) (not n62)
    (not n63) (not n90))))
(declare-const n100 Bool)
(assert (= n100 (and (not n92) (not n98) n99)))
(declare-const n101 Bool)
(assert (= n101 (and |leader of d3 is d3| (not n50) (not n53))))
(declare-const n102 Bool)
(assert (= n102 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n9)
    (not n30) (not n31) (not n35))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n64 n65 n80 n81 n82 n89 n101))))
(declare-const n103 Bool)
(assert (= n103 (and (not n7) (not n76) (not n102))))
(declare-const n104 Bool)
(assert (= n104 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n11)
    (not n42) (not n43) (not n46))) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n64 n65 n69 n94 n95 n96 n101))))
(declare-const n105 Bool)
(assert (= n105 (and (not n6) (not n93) (not n104))))
(declare-const n106 Bool)
(assert (= n106 (and |power of d3 is up| (not |leader of d3 is none|) (or n14 n48 n51) (not n64)
    (not n65) (not n101))))
(declare-const n107 Bool)
(assert (= n107 (and (not n103) (not n105) n106)))
(declare-const n108 Bool)
(assert (= n108 (and |power of d1 is up| (not n57) (not n75) (not n84) (not n85))))
(declare-const n109 Bool)
(assert (= n109 (and |power of d1 is up| (not n8) (not n58) (not n84) (not n85) (or n66 n74))))
(declare-const n110 Bool)
(assert (= n110 (and |power of d1 is up| (not n7) (not n59) (not n75) (not n85) (or n76 n83))))
(declare-const n111 Bool)
(assert (= n111 (and |power of d2 is up| (not n8) (not n57) (not n98) (not n99) (or n66 n91))))
(declare-const n112 Bool)
(assert (= n112 (and |power of d2 is up| (not n58) (not n92) (not n98) (not n99))))
(declare-const n113 Bool)
(assert (= n113 (and |power of d2 is up| (not n6) (not n59) (not n92) (not n99) (or n93 n97))))
(declare-const n114 Bool)
(assert (= n114 (and |power of d3 is up| (not n7) (not n57) (not n105) (not n106) (or n76 n102))))
(declare-const n115 Bool)
(assert (= n115 (and |power of d3 is up| (not n6) (not n58) (not n103) (not n106) (or n93 n104))))
(declare-const n116 Bool)
(assert (= n116 (and |power of d3 is up| (not n59) (not n103) (not n105) (not n106))))
(declare-const n117 Bool)
(assert (= n117 (and n2 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
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
(declare-const n118 Bool)
(assert (= n118 (and (not n86) (not n100))))
(declare-const n119 Bool)
(assert (= n119 (and (not n86) (not n107))))
(declare-const n120 Bool)
(assert (= n120 (and (not n100) (not n107))))
(declare-const n121 Bool)
(assert (= n121 (and (not n75) (not n84) (not n85) (not n92) (not n98) (not n99) (not n103)
    (not n105) (not n106) (or (and |power of d1 is off| (not n75) (not n84) (not n85)) (and
    |power of d1 is up| (not n75) (not n84) (not n85)) (and |power of d1 is starting| (or n86 (and
    |power of d1 is starting| (not n75) (not n84)))) (and |power of d1 is held| (not n86))) (or (and
    |leader of d1 is none| (ite |power of d1 is up| (and (not n108) (not n109) (not n110))
    |leader of d1 is none|)) (and |leader of d1 is d1| (ite |power of d1 is up| n108
    |leader of d1 is d1|)) (and |leader of d1 is d2| (ite |power of d1 is up| n109
    |leader of d1 is d2|)) (and |leader of d1 is d3| (ite |power of d1 is up| n110
    |leader of d1 is d3|))) (or (and |power of d2 is off| (not n92) (not n98) (not n99)) (and
    |power of d2 is up| (not n92) (not n98) (not n99)) (and |power of d2 is starting| (or n100 (and
    |power of d2 is starting| (not n92) (not n98)))) (and |power of d2 is held| (not n100))) (or
    (and |leader of d2 is none| (ite |power of d2 is up| (and (not n111) (not n112) (not n113))
    |leader of d2 is none|)) (and |leader of d2 is d1| (ite |power of d2 is up| n111
    |leader of d2 is d1|)) (and |leader of d2 is d2| (ite |power of d2 is up| n112
    |leader of d2 is d2|)) (and |leader of d2 is d3| (ite |power of d2 is up| n113
    |leader of d2 is d3|))) (or (and |power of d3 is off| (not n103) (not n105) (not n106)) (and
    |power of d3 is up| (not n103) (not n105) (not n106)) (and |power of d3 is starting| (or n107
    (and |power of d3 is starting| (not n103) (not n105)))) (and |power of d3 is held| (not n107)))
    (or (and |leader of d3 is none| (ite |power of d3 is up| (and (not n114) (not n115) (not n116))
    |leader of d3 is none|)) (and |leader of d3 is d1| (ite |power of d3 is up| n114
    |leader of d3 is d1|)) (and |leader of d3 is d2| (ite |power of d3 is up| n115
    |leader of d3 is d2|)) (and |leader of d3 is d3| (ite |power of d3 is up| n116
    |leader of d3 is d3|))) (or (not |d1 senior to d2|) n118) (or (not |d1 senior to d3|) n119) (or
    (not |d2 senior to d1|) n118) (or (not |d2 senior to d3|) n120) (or (not |d3 senior to d1|) n119)
    (or (not |d3 senior to d2|) n120))))
; Every variable has one value, and the laws of all states apply.
(assert n117)
; The state is settled.
(assert (and (or (not |power of d1 is up|) |leader of d1 is d1| n87 n88) (or
    (not |power of d2 is up|) |leader of d2 is d2| n67 n68) (or (not |power of d3 is up|)
    |leader of d3 is d3| n77 n78) (or (not |power of d1 is up|) (not |power of d2 is up|)
    (not |d1--d2 plugged|) (and |leader of d1 is none| |leader of d2 is none|) n70 n71 n72) (or
    (not |power of d1 is up|) (not |power of d3 is up|) (not |d1--d3 plugged|) (and
    |leader of d1 is none| |leader of d3 is none|) n80 n81 n82) (or (not |power of d2 is up|)
    (not |power of d3 is up|) (not |d2--d3 plugged|) (and |leader of d2 is none|
    |leader of d3 is none|) n94 n95 n96)))
; And this is false: a pass holds and restarts no one and changes nothing.
(assert (not n121))
(check-sat)
(exit)
